package dev.gambrel.conformance.published;

import static dev.gambrel.conformance.published.WeighedCarcass.assertPrinted;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Michigan State University Extension, How much to expect when buying freezer beef, part two. */
class BeefTakeHomeTest {
    private static final String SOURCE = "BEEFMSU, How much to expect when buying freezer beef, part two";
    private static final List<String> PRIMALS =
            List.of("chuck", "rib", "loin", "round", "brisket plate and flank", "miscellaneous");

    private final PublishedTable table = PublishedTable.of("02-beef-take-home.cuts");

    @ParameterizedTest
    @CsvSource(textBlock = """
            chuck, 29, 122, 142, 162
            rib, 9, 38, 44, 50
            loin, 16, 67, 78, 90
            round, 22, 92, 108, 123
            brisket plate and flank, 19, 80, 93, 106
            miscellaneous, 5, 21, 25, 28
            """)
    void each_primal_brings_home_its_printed_pounds(
            String primal, String share, String of600, String of700, String of800) {
        String line = "take-home / " + primal;
        assertPrinted(share, carcass("600").percentOfCutAbove(line), SOURCE);
        assertPrinted(of600, carcass("600").weight(line), SOURCE);
        assertPrinted(of700, carcass("700").weight(line), SOURCE);
        assertPrinted(of800, carcass("800").weight(line), SOURCE);
    }

    @Test
    void seventy_per_cent_of_a_carcass_is_taken_home() {
        assertPrinted("420", carcass("600").weight("take-home"), SOURCE);
        assertPrinted("490", carcass("700").weight("take-home"), SOURCE);
    }

    @Test
    void the_printed_559_pounds_add_up_rounded_lines_where_70_per_cent_of_800_is_560() {
        assertPrinted("560", carcass("800").weight("take-home"), SOURCE);
        long roundedLines = PRIMALS.stream()
                .flatMap(primal -> Stream.of(carcass("800").weight("take-home / " + primal)))
                .mapToLong(pounds -> Long.parseLong(Printed.like("0", pounds)))
                .sum();
        assertEquals(559, roundedLines, SOURCE);
    }

    private WeighedCarcass carcass(String pounds) {
        return table.weighed(pounds, Unit.POUND, Basis.COLD);
    }
}
