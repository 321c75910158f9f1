package dev.gambrel.examples;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.portions.Promise;
import dev.gambrel.yields.portions.SeveralCarcasses;
import java.nio.file.Path;
import java.util.Locale;

/** How many steaks may be promised to Harbour Table from 40 hoggets, so that the promise is kept 19 times in 20. */
public final class PromiseToABuyer {
    private static final Promise PROMISE = new Promise(0.95, SeveralCarcasses.of(40));

    private PromiseToABuyer() {}

    /**
     * Prints what may be promised of each portion of a specification.
     *
     * @param args the specification
     */
    public static void main(String[] args) {
        CutTree tree =
                new SpecCompiler().compile(Path.of(args[0])).orElseThrow().tree();
        ExpectedYields hogget = Yields.of(tree).forTypicalCarcass().orElseThrow();
        PortionYield.of(hogget).forEach(portion -> System.out.print(promised(portion)));
    }

    private static String promised(PortionYield portion) {
        String name = portion.from().portion().name().text();
        return portion.numberFrom(PROMISE.from())
                .map(number -> String.format(
                        Locale.ROOT,
                        "%s: %d promised, %.1f expected\n",
                        name,
                        number.promised(PROMISE.certainty()),
                        number.expected()))
                .orElse(name + ": nothing can be promised, since no spread is stated\n");
    }
}
