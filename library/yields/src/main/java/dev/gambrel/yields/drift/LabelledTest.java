package dev.gambrel.yields.drift;

import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.Weighing;
import java.util.stream.Collectors;

/**
 * A cutting test, and what it may have in common with others.
 *
 * @param name what it is called in print, such as the name of its sheet and its date
 * @param cutter who cut; empty if not said
 * @param lot of which lot the carcass was; empty if not said
 * @param test what was weighed, in balance
 */
public record LabelledTest(String name, String cutter, String lot, CuttingTest test) {
    /** What tests may have in common. */
    public enum Common {
        /** Who cut. */
        CUTTER,
        /** Of which lot the carcass was. */
        LOT,
        /** On which scale the part was weighed. */
        SCALE
    }

    /**
     * What a part of the test has in common with that part of other tests.
     *
     * @param common in what respect
     * @param part its line of the plan
     * @return a name; empty if not said, or if the part was not weighed
     */
    public String label(Common common, int part) {
        return switch (common) {
            case CUTTER -> cutter;
            case LOT -> lot;
            case SCALE -> scale(part);
        };
    }

    private String scale(int part) {
        return test.reading(part).stream()
                .flatMap(reading -> reading.weighings().stream())
                .map(Weighing::scale)
                .map(scale -> scale.name())
                .distinct()
                .sorted()
                .collect(Collectors.joining(" and "));
    }
}
