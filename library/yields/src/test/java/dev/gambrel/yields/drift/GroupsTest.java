package dev.gambrel.yields.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.control.GroupDifference;
import dev.gambrel.yields.control.WelchTest;
import dev.gambrel.yields.drift.LabelledTest.Common;
import dev.gambrel.yields.figure.Interval;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Of many differences that are looked at, few of those that are told are chance. */
class GroupsTest {
    private static List<GroupFinding> findings(double... chances) {
        return Arrays.stream(chances)
                .mapToObj(chance -> new GroupFinding(
                        1,
                        Common.CUTTER,
                        new GroupDifference("block", 5, 5, new WelchTest(1, 1, 8), new Interval(0, 2), chance)))
                .toList();
    }

    /**
     * The fifteen probabilities of the example of Y. Benjamini and Y. Hochberg, 1995, of which four are told (from memory); adjusted
     * for all fifteen one by one, as C. E. Bonferroni would, only three are.
     */
    @Test
    void theExampleOfTheProcedureTellsFour() {
        List<GroupFinding> all = findings(
                0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528,
                0.7590, 1.0);
        assertEquals(all.subList(0, 4), Groups.told(all, 0.05));
    }

    /** Of 2,000 families 5 % are 100, with a standard deviation of 9.7 (binomial): 140 are 4 of them more. */
    @Test
    void whereNothingDiffersSomethingIsToldInAboutOneFamilyOfTwenty() {
        Random random = new Random(20_261_130);
        int told = 0;
        for (int family = 0; family < 2_000; family++) {
            List<GroupFinding> all = findings(random.doubles(40).toArray());
            told += Groups.told(all, 0.05).isEmpty() ? 0 : 1;
        }
        assertTrue(told > 60 && told < 140, told + " families");
    }

    @Test
    void nothingComparedTellsNothing() {
        assertEquals(List.of(), Groups.told(List.of(), 0.05));
    }
}
