package dev.gambrel.tree.anatomy;

import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * A cut's number in a published scheme.
 *
 * @param scheme who numbers: "UNECE"
 * @param number the number as printed, which may carry letters
 * @param edition the edition as printed, usually a year; empty where none was given
 * @param but in what the cut differs from what the scheme describes, in words; empty where it does not
 * @param sources names of the sources where the number was seen
 */
public record Reference(TradeName scheme, String number, String edition, String but, List<TradeName> sources) {
    /** Copies the list. */
    public Reference {
        sources = List.copyOf(sources);
    }

    /**
     * A number without a difference, and without a source beside it.
     *
     * @param scheme who numbers
     * @param number the number as printed
     * @param edition the edition as printed; empty where none was given
     */
    public Reference(TradeName scheme, String number, String edition) {
        this(scheme, number, edition, "", List.of());
    }
}
