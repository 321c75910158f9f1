package dev.gambrel.references.claims;

import dev.gambrel.references.ranges.Bounds;

/** A claim on weight beside printed bounds. */
final class WeightComparison {
    private WeightComparison() {}

    /** Of printed bounds both ends count as held, since a claim of 6 to 8 is meant by whoever prints 6 to 8. */
    static Agreement of(Bounds bounds, Claim.PieceWeight claim) {
        int below = below(bounds, claim);
        int above = above(bounds, claim);
        if (isApart(bounds, claim)) {
            return Agreement.CONTRADICTS;
        } else if (below == 0 && above == 0) {
            return Agreement.AGREES;
        } else if (below <= 0 && above <= 0) {
            return Agreement.TIGHTER;
        }
        return below >= 0 && above >= 0 ? Agreement.LOOSER : Agreement.PARTLY;
    }

    /** Positive if the claim goes further down than the bounds. */
    private static int below(Bounds bounds, Claim.PieceWeight claim) {
        if (bounds instanceof Bounds.Between between) {
            return between.from().compareTo(claim.from());
        }
        return bounds instanceof Bounds.Up up
                ? up.from().compareTo(claim.from())
                : -claim.from().amount().signum();
    }

    /** Positive if the claim goes further up than the bounds; what has no top is never passed. */
    private static int above(Bounds bounds, Claim.PieceWeight claim) {
        if (bounds instanceof Bounds.Between between) {
            return claim.to().compareTo(between.to());
        }
        return bounds instanceof Bounds.Under under ? claim.to().compareTo(under.to()) : -1;
    }

    /** Ranges that only touch have nothing in common: what lies on the edge is in one of them alone. */
    private static boolean isApart(Bounds bounds, Claim.PieceWeight claim) {
        boolean isPoint = claim.from().compareTo(claim.to()) == 0;
        if (!isPoint && bounds instanceof Bounds.Between between) {
            return claim.to().compareTo(between.from()) <= 0 || claim.from().compareTo(between.to()) >= 0;
        }
        return !bounds.isReachedBy(claim.to()) || bounds.isPassedBy(claim.from());
    }
}
