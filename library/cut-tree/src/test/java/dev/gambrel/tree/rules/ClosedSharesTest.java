package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.bone;
import static dev.gambrel.tree.Sheet.cited;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.loss;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.Sheet.trim;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClosedSharesTest {
    @Test
    void parts_of_a_hundred_percent_close() {
        keepsTheRules(Sheet.of(cut("leg", "33.0"), cut("loin", "67.0")));
        keepsTheRules(Sheet.of(cut("leg", "99.5"), loss("saw", "0.5")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"67.05", "66.95", "67.0500", "67"})
    void half_of_the_last_place_of_printed_figures_is_allowed(String loin) {
        keepsTheRules(Sheet.of(cut("leg", "33.0"), cut("loin", loin)));
    }

    @ParameterizedTest
    @CsvSource({
        "67.06, 100.06 %, 0.06 points too much",
        "66.94, 99.94 %, 0.06 points too little",
        "67.0500000000000001, 100.0500000000000001 %, 0.0500000000000001 points too much",
        "68.0, 101.0 %, 1 point too much"
    })
    void more_is_not(String loin, String sum, String gap) {
        Diagnostic finding = only(Sheet.of(cut("leg", "33.0"), cut("loin", loin)), TreeCode.SUM_NOT_100);
        assertEquals("The parts of the carcass add up to " + sum + ", which is " + gap + ".", finding.message());
    }

    @Test
    void one_rest_takes_what_is_left() {
        keepsTheRules(Sheet.of(cut("leg", "33.0"), rest("mince")));
        keepsTheRules(Sheet.of(cut("leg", "100"), rest("mince")));
    }

    @Test
    void two_rests_cannot_both_take_it() {
        Diagnostic finding =
                only(Sheet.of(cut("leg", "100", cut("chump", "15"), rest("mince"), rest("diced"))), TreeCode.TWO_RESTS);
        assertEquals("leg / rest, name 1", where(finding.place()));
        assertEquals("leg / rest, name", where(finding.related().get(0).place()));
    }

    @Test
    void less_than_nothing_is_not_left() {
        Diagnostic finding = only(
                Sheet.of(cut("leg", "100", cut("chump", "60"), cut("shank", "40.01"), rest("mince"))),
                TreeCode.NEGATIVE_REST);
        assertEquals(
                "The named parts of the leg already add up to 100.01 %, so less than nothing is left.",
                finding.message());
    }

    @Test
    void a_cut_that_is_not_divided_keeps_what_is_not_taken_off() {
        keepsTheRules(Sheet.of(cut("leg", "100", bone("femur", "7"), trim("fat", "4"), loss("saw", "0.5"))));
        breaks(Sheet.of(cut("leg", "100", bone("femur", "60"), trim("fat", "41"))), TreeCode.NEGATIVE_REST);
    }

    @Test
    void a_trim_without_a_figure_stays_in_what_is_left() {
        keepsTheRules(Sheet.of(cut("leg", "100", cut("chump", "100"), trim("fat", ""))));
    }

    @Test
    void a_cut_that_divides_into_one_is_all_of_it() {
        keepsTheRules(Sheet.of(cut("leg", "100", cut("whole leg", "100"))));
        breaks(Sheet.of(cut("leg", "100", cut("whole leg", "99"))), TreeCode.SUM_NOT_100);
    }

    @Test
    void a_carcass_that_nobody_divides_is_left_in_peace() {
        keepsTheRules(Sheet.of());
    }

    private static Cut[] fallow(String source) {
        return new Cut[] {
            cited(cut("neck", "12.6"), source),
            cited(cut("flank", "15.4"), source),
            cited(cut("shoulder", "17.8"), source),
            cited(cut("saddle", "15.5"), source),
            cited(cut("haunch", "39.4"), source)
        };
    }

    /** Worked scene of the design, from the fallow figures of FALLOWNZ, which do not close as printed. */
    @Test
    void the_fallow_figures_are_shown_as_a_column_with_a_running_total() {
        Diagnostic finding =
                only(Sheet.of(fallow("FALLOWNZ")).citing("FALLOWNZ", Source.Kind.PUBLISHED), TreeCode.SUM_NOT_100);
        assertEquals("The parts of the carcass add up to 100.7 %, which is 0.7 points too much.", finding.message());
        assertEquals("carcass, name", where(finding.place()));
        assertEquals("""
                part      share %  running total %
                neck         12.6             12.6
                flank        15.4             28.0
                shoulder     17.8             45.8
                saddle       15.5             61.3
                haunch       39.4            100.7""", finding.notes().get(0));
    }

    /** The same scene: repairs 12.512, 15.293, 17.676, 15.392 and 39.126 are named, none is made. */
    @Test
    void the_fallow_figures_can_be_scaled_or_one_joint_be_the_rest() {
        Diagnostic finding =
                only(Sheet.of(fallow("FALLOWNZ")).citing("FALLOWNZ", Source.Kind.PUBLISHED), TreeCode.SUM_NOT_100);
        assertEquals(
                List.of(
                        "Leave the figure out of one part and write it as the rest, or correct a share.",
                        "Or scale all of them to 100 %: neck 12.512, flank 15.293, shoulder 17.676, saddle 15.392,"
                                + " haunch 39.126."),
                finding.help());
        assertTrue(finding.fixes().isEmpty());
    }

    @Test
    void a_published_source_that_does_not_close_is_named() {
        Diagnostic finding =
                only(Sheet.of(fallow("FALLOWNZ")).citing("FALLOWNZ", Source.Kind.PUBLISHED), TreeCode.SUM_NOT_100);
        assertEquals(
                "All of these figures are from FALLOWNZ, so the source itself does not close as printed:"
                        + " FALLOWNZ, page 6",
                finding.notes().get(1));
    }

    @Test
    void a_source_is_not_blamed_for_what_is_not_all_its_own() {
        Cut[] mixed = fallow("FALLOWNZ");
        mixed[0] = cut("neck", "12.6");
        Sheet partly = Sheet.of(mixed).citing("FALLOWNZ", Source.Kind.PUBLISHED);
        assertEquals(1, only(partly, TreeCode.SUM_NOT_100).notes().size());
        Sheet weighed = Sheet.of(fallow("bench")).citing("bench", Source.Kind.MEASURED);
        assertEquals(1, only(weighed, TreeCode.SUM_NOT_100).notes().size());
    }

    @Test
    void a_part_that_is_missing_is_asked_for() {
        Diagnostic finding = only(Sheet.of(cut("leg", "33.0"), cut("loin", "12")), TreeCode.SUM_NOT_100);
        assertEquals(List.of("Add the part that is missing, or a line such as: rest -> mince"), finding.help());
    }

    @Test
    void scaling_is_offered_up_to_five_points() {
        assertTrue(offersScaling("72.0"));
        assertFalse(offersScaling("72.01"));
        assertTrue(offersScaling("62.0"));
        assertFalse(offersScaling("61.99"));
    }

    private static boolean offersScaling(String loin) {
        return only(Sheet.of(cut("leg", "33.0"), cut("loin", loin)), TreeCode.SUM_NOT_100).help().stream()
                .anyMatch(help -> help.startsWith("Or scale"));
    }

    @Test
    void the_column_stands_straight_and_says_what_has_no_figure() {
        Sheet sheet = Sheet.of(cut("leg", "60.5"), cut("loin", "60"), trim("channel fat", ""), rest("mince"));
        assertEquals("""
                part              share %  running total %
                leg                  60.5             60.5
                loin                   60            120.5
                channel fat    not stated
                rest         what is left""", only(sheet, TreeCode.NEGATIVE_REST).notes().get(0).replaceAll("(?m) +$", ""));
    }

    @Test
    void a_column_of_more_than_forty_rows_is_cut_short() {
        Part[] parts =
                IntStream.rangeClosed(1, 60).mapToObj(i -> cut("cut " + i, "2")).toArray(Part[]::new);
        String column = only(Sheet.of(parts), TreeCode.SUM_NOT_100).notes().get(0);
        assertEquals(41, column.lines().count());
        assertTrue(column.endsWith("\nand 21 more"), column);
    }
}
