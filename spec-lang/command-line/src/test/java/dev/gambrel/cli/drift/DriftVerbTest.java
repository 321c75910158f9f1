package dev.gambrel.cli.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hoggets of 22 kg, both legs and the rest weighed of each. */
class DriftVerbTest {
    private static final String[] LEGS = {"7.26", "7.31", "7.22", "7.28", "7.25", "7.33", "7.24", "7.27", "7.29"};

    @TempDir
    Path folder;

    private String sheet(int day, String legs) {
        BigDecimal rest = new BigDecimal("22").subtract(new BigDecimal(legs));
        return Run.write(
                folder, "day-" + day + ".csv", """
                specification,Marram hogget
                revision,3
                date,2026-03-%02d
                scale,bench,5 g,1 g
                carcass,22.00 kg,cold
                part,pieces,gross,tare,unit
                leg,pair,%s,0,kg
                rest,all,%s,0,kg
                """.formatted(day, legs, rest).replace("2026-03-00", "Monday"));
    }

    private Run drift(List<String> sheets, String... more) {
        List<String> args = new ArrayList<>(List.of("drift", Run.write(folder, "hogget.cuts", Run.HOGGET), "--sheet"));
        args.addAll(sheets);
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private List<String> sheets(int number) {
        List<String> sheets = new ArrayList<>();
        for (int i = number; i >= 1; i--) {
            sheets.add(sheet(i, LEGS[i - 1]));
        }
        return sheets;
    }

    @Test
    void sheetsGivenBackwardsAreReadInTheOrderOfTheirDates() {
        Run run = drift(sheets(9));
        assertEquals(ExitStatus.FINE, run.status(), run.out() + run.err());
        assertTrue(
                run.out()
                        .startsWith(
                                "9 tests in the order of their dates, from day-1.csv (2026-03-01) to day-9.csv (2026-03-09)."),
                run.out());
        assertTrue(run.out().contains("Nothing moved: chance explains every test."), run.out());
        assertTrue(run.out().contains("not compared"), run.out());
    }

    @Test
    void aLegFarOffIsToldAndEndsWithOne() {
        List<String> sheets = sheets(9);
        sheets.add(sheet(10, "8.40"));
        Run run = drift(sheets, "--first", "9");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.out().contains("leg was 38.18 % of carcass in day-10.csv (2026-03-10): above the "), run.out());
    }

    @Test
    void aSheetWithoutADateIsAskedAbout() {
        Run run = drift(List.of(sheet(0, LEGS[0]), sheet(3, LEGS[1])));
        assertTrue(run.out().contains("in the order in which they were given"), run.out());
        assertTrue(run.out().contains("A sheet has no date such as 2026-03-02"), run.out());
    }

    @Test
    void whereNoSheetBalancesNothingIsCharted() {
        String wrong = Run.write(folder, "wrong.csv", """
                specification,Marram hogget
                revision,3
                scale,bench,5 g,1 g
                carcass,22.00 kg,cold
                part,pieces,gross,tare,unit
                leg,pair,9.000,0,kg
                rest,all,14.740,0,kg
                """);
        Run run = drift(List.of(wrong));
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.out().startsWith("No sheet balances"), run.out());
    }

    @Test
    void aLevelOfFewerThanEightTestsIsRefused() {
        for (String number : List.of("7", "x", "-8", "80000", "")) {
            Run run = drift(sheets(1), "--first=" + number);
            assertEquals(ExitStatus.WRONG_USAGE, run.status(), number);
            assertTrue(
                    run.err().toLowerCase(Locale.ROOT).contains("is not a number of tests from 8 to 9999"), run.err());
        }
    }
}
