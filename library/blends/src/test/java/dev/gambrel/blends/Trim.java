package dev.gambrel.blends;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.lean.Lean;
import java.util.List;

/** Tubs for tests, written short. Printed problems give fat; here lean is what is not fat. */
final class Trim {
    static final double PLENTY = 1e6;

    private Trim() {}

    static Tub fat(String name, double percentFat, double kilograms, double price) {
        return new Tub(TradeName.of(name), Lean.of(100 - percentFat, Judged.CHEMICAL), kilograms, Price.of(price));
    }

    static Tub straying(String name, double percentFat, double sd, double price) {
        return new Tub(TradeName.of(name), lean(100 - percentFat, sd), PLENTY, Price.of(price));
    }

    static Lean lean(double percent, double sd) {
        return new Lean(new Estimate(percent, new Spread.Stated(sd)), Judged.CHEMICAL);
    }

    static Tub visual(String name, double percentLean, double kilograms) {
        return new Tub(TradeName.of(name), Lean.of(percentLean, Judged.VISUAL), kilograms, Price.NOT_STATED);
    }

    static Tubs tubs(Tub... tubs) {
        return Tubs.of(List.of(tubs)).orElseThrow();
    }

    static LeanTarget exactlyFat(double percent) {
        return LeanTarget.exactly(100 - percent, Judged.CHEMICAL);
    }

    static LeanTarget atMostFat(double percent) {
        return LeanTarget.atLeast(100 - percent, Judged.CHEMICAL);
    }

    static double of(Blend blend, String name) {
        return blend.taken().stream()
                .filter(taken -> taken.tub().name().equals(TradeName.of(name)))
                .mapToDouble(Taken::kilograms)
                .sum();
    }
}
