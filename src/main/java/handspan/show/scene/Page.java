package handspan.show.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * A station as it is shown.
 *
 * @param station which
 * @param blocks from top to bottom
 */
public record Page(Station station, List<Block> blocks) {
    /** Copies the list. */
    public Page {
        blocks = List.copyOf(blocks);
    }

    /** All that can be done on it. */
    public List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Block.Offers several) {
                offers.addAll(several.offers());
            } else if (block instanceof Block.Keys keys) {
                offers.addAll(keys.offers());
            }
        }
        return offers;
    }
}
