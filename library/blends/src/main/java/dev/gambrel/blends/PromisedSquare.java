package dev.gambrel.blends;

import dev.gambrel.yields.lean.Lean;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * How much of a fatter tub may go with a leaner one where a lean is promised: the square, with how far the lots stray in it.
 *
 * <p>With y the part of the fatter, d = f - t and e = g - f, lean f and g straying by s and r, it holds while d + e y - z √(s² (1 -
 * y)² + r² y²) is not below 0. At the edge that is a quadratic: (e² - z² (s² + r²)) y² + 2 (d e + z² s²) y + d² - z² s² = 0.
 */
public final class PromisedSquare {
    /** A millionth of a point counts as kept: where nothing strays the two roots are one, and told to half the digits. */
    private static final double NEAR = 1e-6;

    private final double z;
    private final double d;
    private final double e;
    private final double s2;
    private final double r2;

    private PromisedSquare(Lean leaner, Lean fatter, double percent, double z) {
        this.z = z;
        d = leaner.percent().mean() - percent;
        e = fatter.percent().mean() - leaner.percent().mean();
        s2 = leaner.percent().spread().variance();
        r2 = fatter.percent().spread().variance();
    }

    /**
     * The most of the fatter tub.
     *
     * @param leaner the leaner tub, its spread stated
     * @param fatter the fatter tub, its spread stated
     * @param percent the per cent lean that is promised
     * @param promise how surely
     * @return its part of the blend, from 0 to 1; nothing where no blend of the two keeps the promise
     * @throws IllegalArgumentException if the two are not judged in the same way, or a spread is not stated
     */
    public static OptionalDouble mostOfFatter(Lean leaner, Lean fatter, double percent, Promise promise) {
        if (leaner.judged() != fatter.judged()) {
            throw new IllegalArgumentException("visual and chemical lean cannot be blended as one figure");
        }
        PromisedSquare square = new PromisedSquare(leaner, fatter, percent, promise.deviations());
        if (Double.isNaN(square.s2 + square.r2)) {
            throw new IllegalArgumentException("a promise needs to know how far lean strays");
        }
        return square.edges().filter(square::holds).max();
    }

    private DoubleStream edges() {
        double a = e * e - z * z * (s2 + r2);
        double b = d * e + z * z * s2;
        double c = d * d - z * z * s2;
        double root = Math.sqrt(Math.max(0, b * b - a * c));
        double far = -(b + Math.copySign(root, b));
        return DoubleStream.of(0, 1, far / a, c / far).filter(y -> y >= 0 && y <= 1);
    }

    private boolean holds(double y) {
        double strays = z * Math.sqrt(s2 * (1 - y) * (1 - y) + r2 * y * y);
        return d + e * y - strays >= -NEAR;
    }
}
