package dev.gambrel.examples;

import dev.gambrel.blends.LargestBatch;
import dev.gambrel.blends.LeanTarget;
import dev.gambrel.blends.Price;
import dev.gambrel.blends.Taken;
import dev.gambrel.blends.Tub;
import dev.gambrel.blends.Tubs;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.lean.Lean;
import java.util.List;

/** Marram Isle Meats has three tubs of hogget trim on a Friday, and Harbour Table wants burgers of 80 % lean by eye. */
public final class BlendTubs {
    private BlendTubs() {}

    /**
     * Prints the largest batch that the tubs give.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Tubs tubs = Tubs.of(List.of(tub("shoulder trim", 88, 42), tub("neck", 78, 25), tub("breast", 60, 36)))
                .orElseThrow();
        LargestBatch found =
                LargestBatch.of(tubs, LeanTarget.atLeast(80, Judged.VISUAL)).orElseThrow();
        for (Taken taken : found.batch().taken()) {
            System.out.println(taken.tub().name() + ": " + Math.round(1000 * taken.kilograms()) + " g");
        }
        double missing = found.missing().kilogramsOf(90).orElse(0);
        System.out.println("90 % lean to use up the rest: " + Math.round(1000 * missing) + " g");
    }

    private static Tub tub(String name, double percent, double kilograms) {
        return new Tub(TradeName.of(name), Lean.of(percent, Judged.VISUAL), kilograms, Price.NOT_STATED);
    }
}
