package dev.gambrel.yields.composition;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * Shares of one whole, each more than 0, together 1. Only their ratios count: parts in kilograms and parts in per cent are the
 * same composition.
 *
 * <p>Compositions are a space of their own, in which {@link #perturbedBy} adds, {@link #poweredBy} multiplies and {@link
 * #distanceTo} measures (J. Aitchison, The Statistical Analysis of Compositional Data, Chapman and Hall, 1986). A part that is 0
 * has no logarithm: where some carcasses give a part and others do not, those are cut in two ways and not one.
 *
 * <p>Immutable; safe between threads.
 */
public final class Composition {
    private final double[] share;

    private Composition(double[] share) {
        this.share = share;
    }

    /**
     * Closes parts to a whole.
     *
     * @param parts in any unit, 2 or more
     * @return their shares
     * @throws IllegalArgumentException if there are fewer than 2, or one is not a number more than 0
     */
    public static Composition of(double... parts) {
        if (parts.length < 2) {
            throw new IllegalArgumentException("a whole has 2 parts or more, not " + parts.length);
        }
        double sum = 0;
        for (int i = 0; i < parts.length; i++) {
            if (!(parts[i] > 0 && parts[i] < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "part " + (i + 1) + " is " + parts[i] + ": a share of a composition is more than 0");
            }
            sum += parts[i];
        }
        double whole = sum;
        return new Composition(Arrays.stream(parts).map(part -> part / whole).toArray());
    }

    /**
     * Closes parts that were printed with rounding. D parts rounded to steps of u may miss the whole by D u / 2 together; what
     * misses it by more is not rounding.
     *
     * @param whole what the parts should add up to, such as 100
     * @param step the last place printed, such as 0.1
     * @param parts as printed
     * @return their shares
     * @throws IllegalArgumentException if they miss the whole by more than rounding can, or as {@link #of}
     */
    public static Composition printed(double whole, double step, double... parts) {
        double sum = Arrays.stream(parts).sum();
        double most = parts.length * step / 2;
        if (!(Math.abs(sum - whole) <= most * (1 + 1e-9))) {
            throw new IllegalArgumentException("the parts add up to " + sum + ", and rounding may be off by " + most
                    + " from " + whole + " at most");
        }
        return of(parts);
    }

    /**
     * The composition of given log-ratios.
     *
     * @param ilr isometric log-ratios as {@link #ilr} gives them, 1 or more
     * @return as many parts and one more
     */
    public static Composition ofIlr(double... ilr) {
        double[] clr = new double[ilr.length + 1];
        double after = 0;
        for (int i = ilr.length; i >= 1; i--) {
            double z = ilr[i - 1] / Math.sqrt((double) i * (i + 1));
            clr[i] = after - i * z;
            after += z;
        }
        clr[0] = after;
        return ofLogarithms(clr.length, i -> clr[i]);
    }

    /** Of parts whose logarithms differ by a constant from these; the largest first becomes 1, so that none overflows. */
    static Composition ofLogarithms(int parts, IntToDoubleFunction logarithm) {
        double[] logs = new double[parts];
        Arrays.setAll(logs, logarithm);
        double largest = Arrays.stream(logs).max().orElse(0);
        return of(Arrays.stream(logs).map(log -> Math.exp(log - largest)).toArray());
    }

    /**
     * How many parts there are.
     *
     * @return 2 or more
     */
    public int size() {
        return share.length;
    }

    /**
     * The share of a part.
     *
     * @param part its index, from 0
     * @return a part of 1, more than 0
     */
    public double share(int part) {
        return share[part];
    }

    /**
     * Centred log-ratios: the logarithm of each share over the geometric mean of all. They add up to 0.
     *
     * @return one for each part
     */
    public double[] clr() {
        double mean = 0;
        for (double each : share) {
            mean += Math.log(each) / share.length;
        }
        double centre = mean;
        return Arrays.stream(share).map(each -> Math.log(each) - centre).toArray();
    }

    /**
     * Isometric log-ratios: one fewer than parts, that vary freely and keep all distances. The i-th sets the parts up to i
     * against the next: √(i / (i + 1)) ln(g / x), g the geometric mean of the first i and x the part after them (J. J. Egozcue, V.
     * Pawlowsky-Glahn, G. Mateu-Figueras and C. Barceló-Vidal, "Isometric logratio transformations for compositional data
     * analysis", Mathematical Geology 35, 2003).
     *
     * @return one for each part but the first
     */
    public double[] ilr() {
        double[] ilr = new double[share.length - 1];
        double before = Math.log(share[0]);
        for (int i = 1; i < share.length; i++) {
            double next = Math.log(share[i]);
            ilr[i - 1] = Math.sqrt(i / (i + 1.0)) * (before / i - next);
            before += next;
        }
        return ilr;
    }

    /**
     * Part by part multiplied and closed again: the sum of this space.
     *
     * @param other as many parts
     * @return the perturbed composition
     * @throws IllegalArgumentException if the other has another number of parts
     */
    public Composition perturbedBy(Composition other) {
        checkSize(other);
        return ofLogarithms(share.length, i -> Math.log(share[i]) + Math.log(other.share[i]));
    }

    /**
     * Part by part raised to a power and closed again: the multiple of this space.
     *
     * @param power any number; 0 makes all parts equal, less than 0 turns the ratios round
     * @return the powered composition
     */
    public Composition poweredBy(double power) {
        return ofLogarithms(share.length, i -> power * Math.log(share[i]));
    }

    /**
     * How far apart two compositions are, by their ratios (Aitchison's distance): the length of the difference of their centred
     * log-ratios.
     *
     * @param other as many parts
     * @return 0 or more
     * @throws IllegalArgumentException if the other has another number of parts
     */
    public double distanceTo(Composition other) {
        checkSize(other);
        double[] one = clr();
        double[] two = other.clr();
        double squares = 0;
        for (int i = 0; i < one.length; i++) {
            squares += (one[i] - two[i]) * (one[i] - two[i]);
        }
        return Math.sqrt(squares);
    }

    private void checkSize(Composition other) {
        if (other.share.length != share.length) {
            throw new IllegalArgumentException(share.length + " parts cannot be compared with " + other.share.length);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Composition composition && Arrays.equals(share, composition.share);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(share);
    }

    @Override
    public String toString() {
        return Arrays.toString(share);
    }
}
