package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.List;

/**
 * A part that weighed nothing in a test.
 *
 * @param test the name of the test
 * @param part the name of the part
 */
public record PartOfNothing(String test, TradeName part) {
    static List<PartOfNothing> among(List<TradeName> parts, List<CuttingTest> tests) {
        List<PartOfNothing> nothing = new ArrayList<>();
        for (CuttingTest test : tests) {
            if (test.weights().size() != parts.size()) {
                throw new IllegalArgumentException(
                        test.name() + " has " + test.weights().size() + " parts, not " + parts.size());
            }
            for (int i = 0; i < parts.size(); i++) {
                if (test.weights().mean(i) == 0) {
                    nothing.add(new PartOfNothing(test.name(), parts.get(i)));
                }
            }
        }
        return List.copyOf(nothing);
    }
}
