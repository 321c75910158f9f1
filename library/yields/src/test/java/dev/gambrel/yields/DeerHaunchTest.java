package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.figure.Spread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked scene of the design, 1: a cold fallow carcass of 28.40 kg down to the haunch, pair and single. */
class DeerHaunchTest {
    private static final ExpectedYields DEER = Sheet.yields(Sheet.deer(), "28.40");

    @ParameterizedTest
    @CsvSource({
        "rump, 9.0, 1.00962, 0.50481, 3.5550",
        "shank, 11.0, 1.23398, 0.61699, 4.3450",
        "aitch bone, 6.5, 0.72917, 0.364585, 2.5675",
        "femur, 7.0, 0.78526, 0.39263, 2.7650",
        "patella, 0.4, 0.044872, 0.022436, 0.1580",
        "thick flank, 13.5, 1.51443, 0.757215, 5.3325",
        "topside, 20.0, 2.24360, 1.12180, 7.9000",
        "silverside flat, 14.0, 1.57052, 0.78526, 5.5300",
        "salmon cut, 5.6, 0.628208, 0.314104, 2.2120",
        "heel, 4.0, 0.44872, 0.22436, 1.5800",
        "'silverskin, fat and glands', 3.5, 0.39263, 0.196315, 1.3825",
        "drip, 0.5, 0.05609, 0.028045, 0.1975",
        "rest, 5.0, 0.56090, 0.28045, 1.9750"
    })
    void every_part_of_the_haunch_is_told_for_the_pair_and_for_one(
            String part, double ofHaunch, double pair, double one, double ofCarcass) {
        YieldRow row = Sheet.row(DEER, part);
        assertEquals(2, row.pieces());
        assertEquals(ofHaunch, row.percentOfCutAbove().orElseThrow(), 1e-9);
        assertEquals(pair, row.allPieces().orElseThrow().mean(), 1e-9);
        assertEquals(one, row.onePiece().orElseThrow().mean(), 1e-9);
        assertEquals(ofCarcass, row.percentOfCarcass().orElseThrow(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"neck, 3.4080, 1", "flank, 4.2600, 1", "shoulder, 5.1120, 2", "saddle, 4.4020, 1", "haunch, 11.2180, 2"
    })
    void the_joints_weigh_what_the_sheet_says(String joint, double kilograms, int pieces) {
        YieldRow row = Sheet.row(DEER, joint);
        assertEquals(kilograms, row.allPieces().orElseThrow().mean(), 1e-9);
        assertEquals(pieces, row.pieces());
    }

    @Test
    void a_sheet_without_spreads_says_nothing_of_spread() {
        YieldRow topside = Sheet.row(DEER, "topside");
        assertEquals(Spread.NOT_STATED, topside.allPieces().orElseThrow().spread());
        assertTrue(topside.allPieces().orElseThrow().range95().isEmpty());
        assertEquals(Spread.NOT_STATED, DEER.total(Outcome.SALEABLE).spread());
    }

    @Test
    void a_part_is_found_by_its_address() {
        YieldRow topside = Sheet.row(DEER, "topside");
        assertEquals("topside", DEER.row(topside.path()).orElseThrow().name());
        assertEquals("haunch / topside", topside.path().toString());
    }
}
