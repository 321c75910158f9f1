package dev.gambrel.cli.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hogget of 22 kg: both legs, the rest, and what was on the scales. */
class BalanceVerbTest {
    private static final String HEAD = """
            specification,Marram hogget
            revision,3
            scale,bench,5 g,1 g
            carcass,22.00 kg,cold
            part,pieces,gross,tare,unit
            """;
    private static final String GOOD = HEAD + "leg,pair,7.600,0.340,kg\nrest,all,14.740,0,kg\n";
    private static final String HALF = HEAD + "leg,pair,3.970,0.340,kg\nrest,all,14.740,0,kg\n";
    private static final String LEGS = HEAD + "leg,pair,7.600,0.340,kg\n";

    @TempDir
    Path folder;

    private Run balance(String sheet, String... more) {
        String[] args = new String[4 + more.length];
        args[0] = "balance";
        args[1] = Run.write(folder, "hogget.cuts", Run.HOGGET);
        args[2] = "--sheet";
        args[3] = Run.write(folder, "monday.csv", sheet);
        System.arraycopy(more, 0, args, 4, more.length);
        return Run.of(args);
    }

    @Test
    void aSheetThatAddsUpEndsWell() {
        Run run = balance(GOOD);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().contains("The sheet balances"), run.out());
        assertTrue(run.out().contains("Take care"), run.out());
    }

    @Test
    void oneLegWrittenAsThePairIsOfferedAndEndsWithOne() {
        Run run = balance(HALF);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.out().contains("The sheet does not balance"), run.out());
        assertTrue(run.out().contains("Perhaps one piece of leg was weighed and written down as the pair"), run.out());
        assertTrue(run.out().contains("What is wrong is spread over all of these"), run.out());
    }

    @Test
    void aSheetThatNothingChecksIsNotSaidToBalance() {
        Run run = balance(LEGS);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.out().contains("Nothing checks this sheet"), run.out());
        assertFalse(run.out().contains("balances"), run.out());
    }

    @Test
    void aFaultySheetIsToldAndTheOthersAreWorkedOutAllTheSame() {
        String other = Run.write(folder, "tuesday.csv", HEAD + "lag,pair,7.600,0.340,kg\n");
        Run run = balance(GOOD, other);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.err().contains("G2413 (part-not-in-specification) in tuesday.csv, line 6"), run.err());
        assertTrue(run.out().contains("monday.csv"), run.out());
        assertFalse(run.out().contains("tuesday.csv"), run.out());
    }

    @Test
    void allFaultsOfASheetAreToldInOneRun() {
        Run run = balance(HEAD + "lag,pair,7.600,0.340,kg\nleg,both,-1,0.340,st\nrest,all,\"14,740\",0,kg\n");
        for (String code : new String[] {"G2413", "G2416", "G2423", "G2426", "G2422"}) {
            assertTrue(run.err().contains(code), code + " in " + run.err());
        }
        assertEquals("", run.out());
    }

    @Test
    void itIsWrittenForProgramsToo() {
        Run run = balance(HALF, "--as", "json");
        assertTrue(run.out().startsWith("{"), run.out());
        for (String words : new String[] {"does not balance", "one written as pair", "\"sort\"", "\"chiSquare\""}) {
            assertTrue(run.out().contains(words), words + " in " + run.out());
        }
    }

    @Test
    void withPricesTheDifferenceIsToldInMoney() {
        String prices = Run.write(folder, "prices.csv", "currency,crowns\npart,price,unit\nleg,9.20,kg\n");
        Run run = balance(GOOD, "--prices", prices);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().contains("Worth, in crowns"), run.out());
        assertTrue(run.out().contains("Without a price: rest."), run.out());
        Run json = balance(GOOD, "--prices", prices, "--as", "json");
        assertTrue(json.out().contains("\"currency\" : \"crowns\""), json.out());
    }

    @Test
    void faultyPricesAreToldAndTheSheetsAreWorkedOutAllTheSame() {
        Run run = balance(
                GOOD,
                "--prices",
                Run.write(folder, "prices.csv", "part,price,unit\nleg,\"9,20\",lb\nlag,1,kg\nleg,-1,kg\n"));
        assertEquals(ExitStatus.FINDINGS, run.status());
        for (String code : new String[] {"G2422", "G2443", "G2413", "G2415", "G2442"}) {
            assertTrue(run.err().contains(code), code + " in " + run.err());
        }
        assertTrue(run.err().contains("in prices.csv, line 2"), run.err());
        assertTrue(run.out().contains("The sheet balances"), run.out());
        assertFalse(run.out().contains("Worth"), run.out());
    }

    @Test
    void pricesAreReadEvenIfNoSheetCanBe() {
        Run run = balance("part\n", "--prices", Run.write(folder, "prices.csv", "part,price,unit\nlag,1,kg\n"));
        assertTrue(run.err().contains("G2413"), run.err());
        Run none = balance(GOOD, "--prices", folder.resolve("none.csv").toString());
        assertEquals(ExitStatus.COULD_NOT, none.status());
    }

    @Test
    void aSheetMayBeJson() {
        String json = Run.write(folder, "tuesday.json", """
                {"format": "gambrel weigh sheet", "version": 1, "specification": "Marram hogget", "revision": 3,
                 "scales": [{"name": "bench", "division": "5 g", "tare": "1 g"}],
                 "carcass": {"weight": "22.00 kg", "basis": "cold"},
                 "parts": [{"part": "leg", "pieces": "pair", "gross": 7.600, "tare": 0.340, "unit": "kg"},
                           {"part": "rest", "pieces": "all", "gross": 14.740, "tare": 0, "unit": "kg"}]}
                """);
        Run run = balance(GOOD, json);
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        String[] sheets = run.out().split("tuesday.json");
        assertTrue(sheets[0].contains("The sheet balances") && sheets[1].contains("The sheet balances"), run.out());
    }

    @Test
    void aSheetThatIsNotThereCouldNotBeRead() {
        String spec = Run.write(folder, "hogget.cuts", Run.HOGGET);
        Run run = Run.of("balance", spec, "--sheet", folder.resolve("none.csv").toString());
        assertEquals(ExitStatus.COULD_NOT, run.status());
        assertTrue(run.err().contains("none.csv"), run.err());
    }

    @Test
    void withoutASheetItIsWrongUsage() {
        assertEquals(ExitStatus.WRONG_USAGE, Run.of("balance", "hogget.cuts").status());
        assertEquals(ExitStatus.WRONG_USAGE, balance(GOOD, "--as", "csv").status());
    }

    @Test
    void aHostileNameIsShownEscaped() {
        Run run = balance(GOOD.replace("revision", "cutter,\u001b[31m\u202eevil\nrevision"));
        assertFalse(run.out().contains("\u001b") || run.out().contains("\u202e"), run.out());
    }
}
