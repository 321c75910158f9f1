package dev.gambrel.yields.working;

/**
 * How much of a cut goes one way. The two differ where heavy pieces go one way and light ones another.
 *
 * @param pieces of the pieces, as a part of 1
 * @param weight of their weight, as a part of 1
 */
public record Split(double pieces, double weight) {
    static final Split ALL = new Split(1, 1);
    static final Split NONE = new Split(0, 0);

    static Split of(boolean all) {
        return all ? ALL : NONE;
    }

    Split plus(Split other) {
        return new Split(pieces + other.pieces, weight + other.weight);
    }

    /** What this leaves of everything; never less than nothing. */
    Split rest() {
        return new Split(Math.max(0, 1 - pieces), Math.max(0, 1 - weight));
    }

    Split dividedBy(Split sum) {
        return new Split(pieces / sum.pieces, weight / sum.weight);
    }

    /** Whether it is less than one piece, or one gram, in a billion. */
    boolean isNothing() {
        return pieces < 1e-9 || weight < 1e-9;
    }
}
