package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Quantity;

/**
 * A row of a table of tolerances. It holds for sizes from where the row before it ends.
 *
 * @param end the largest size that it holds for
 * @param allowed what it allows
 * @param citation where it stands
 */
public record ToleranceRow(End end, Allowed allowed, Citation citation) {
    /** Where a row ends. */
    public sealed interface End {
        /**
         * Whether a size is not past the end.
         *
         * @param size a weight or a thickness
         * @return true if the row may hold for it
         */
        boolean reaches(Quantity size);

        /**
         * With the size itself.
         *
         * @param size the largest
         */
        record At(Quantity size) implements End {
            @Override
            public boolean reaches(Quantity other) {
                return other.compareTo(size) <= 0;
            }
        }

        /**
         * Without the size itself.
         *
         * @param size the least that is too large
         */
        record Before(Quantity size) implements End {
            @Override
            public boolean reaches(Quantity other) {
                return other.compareTo(size) < 0;
            }
        }

        /** Nowhere. */
        record Open() implements End {
            @Override
            public boolean reaches(Quantity other) {
                return true;
            }
        }
    }
}
