package dev.gambrel.tree.anatomy;

import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * What something is called elsewhere.
 *
 * @param name the other name
 * @param regions where it is called so, as written: "US"; empty where it is so everywhere
 */
public record OtherName(TradeName name, List<String> regions) {
    /** Copies the list. */
    public OtherName {
        regions = List.copyOf(regions);
    }
}
