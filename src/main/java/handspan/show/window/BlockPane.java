package handspan.show.window;

import handspan.show.scene.Block;

/** A component that shows one kind of block, again and again as it changes. */
interface BlockPane {
    /** Whether it can show this one in place of the last. */
    boolean takes(Block block);

    /** Shows it. */
    void show(Block block);
}
