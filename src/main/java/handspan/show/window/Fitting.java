package handspan.show.window;

/** A component whose height depends on the width that it gets. */
interface Fitting {
    /** Height that it needs, px. */
    int heightFor(int widthPx);
}
