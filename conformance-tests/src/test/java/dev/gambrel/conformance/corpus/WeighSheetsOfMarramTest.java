package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Gambrel;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Twelve invented sheets: ten balance, on one a tray was not tared, on one cuts were weighed before they were trimmed. */
class WeighSheetsOfMarramTest {
    private static final Path EXAMPLES = Path.of(System.getProperty("basedir", ""), "..", "examples");

    private record Printed(ExitStatus status, String out, String err) {}

    private static final String[] ALL = {"01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"};

    private static Printed balance(List<String> more, String... sheets) {
        return printed("balance", more, sheets);
    }

    private static Printed printed(String verb, List<String> more, String... sheets) {
        List<String> args = new ArrayList<>(
                List.of(verb, EXAMPLES.resolve("marram").resolve("hogget.cuts").toString(), "--sheet"));
        Stream.of(sheets)
                .map(sheet -> sheet.contains(".") ? sheet : "hogget-" + sheet + ".csv")
                .forEach(sheet ->
                        args.add(EXAMPLES.resolve("weigh-sheets").resolve(sheet).toString()));
        args.addAll(more);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        ExitStatus status = Gambrel.run(args, new Terminal(stream(out), stream(err), false));
        return new Printed(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private static List<String> perhaps(Printed printed) {
        return printed.out().lines().filter(line -> line.startsWith("Perhaps")).toList();
    }

    @Test
    void all_of_them_print_as_expected() {
        Printed text = balance(List.of(), ALL);
        Corpus.hold(text.err() + text.out(), Corpus.folder("sheets").resolve("marram.txt.expected"));
        Corpus.hold(
                balance(List.of("--as", "json"), "09").out(),
                Corpus.folder("sheets").resolve("marram.json.expected"));
        assertEquals(ExitStatus.FINDINGS, text.status());
    }

    @Test
    void what_moved_prints_as_expected_without_the_two_that_are_wrong() {
        Printed text = printed("drift", List.of(), ALL);
        Corpus.hold(text.out(), Corpus.folder("sheets").resolve("drift.txt.expected"));
        Corpus.hold(
                printed("drift", List.of("--as", "json", "--first", "8"), ALL).out(),
                Corpus.folder("sheets").resolve("drift.json.expected"));
        assertEquals(ExitStatus.FINDINGS, text.status());
    }

    @Test
    void a_sheet_in_json_prints_what_the_same_sheet_in_cells_prints() {
        Printed json = balance(List.of(), "hogget-01.json");
        Corpus.hold(json.err() + json.out(), Corpus.folder("sheets").resolve("marram-json.txt.expected"));
        assertEquals(balance(List.of(), "01").out().replace("hogget-01.csv", "hogget-01.json"), json.out());
        assertEquals(ExitStatus.FINE, json.status());
    }

    @Test
    void with_prices_the_difference_is_told_in_money() {
        String prices = EXAMPLES.resolve("marram").resolve("prices.csv").toString();
        Printed text = balance(List.of("--prices", prices), "01");
        Corpus.hold(text.err() + text.out(), Corpus.folder("sheets").resolve("marram-prices.txt.expected"));
        Corpus.hold(
                balance(List.of("--prices", prices, "--as", "json"), "01").out(),
                Corpus.folder("sheets").resolve("marram-prices.json.expected"));
        assertEquals(ExitStatus.FINE, text.status());
    }

    /** 400 g more fat off the topside than on the sheet, and so much less topside. */
    @Test
    void meat_that_is_missing_is_said_to_lie_elsewhere(@TempDir Path folder) throws IOException {
        String sheet = Files.readString(EXAMPLES.resolve("weigh-sheets").resolve("hogget-01.csv"))
                .replace("topside trimmed,pair,1.520", "topside trimmed,pair,1.120")
                .replace("topside / fat,all,0.385", "topside / fat,all,0.785");
        Path file = Files.writeString(folder.resolve("fat.csv"), sheet);
        assertTrue(balance(List.of(), file.toString())
                .out()
                .contains("Meat is 0.658 kg less than was expected; in its place there is 0.372 kg more trim, 0.339"
                        + " kg more not weighed apart, 0.003 kg less bone, 0.050 kg less loss.\n"));
        assertFalse(balance(List.of(), "01").out().contains("Meat is"));
    }

    @Test
    void ten_of_them_balance() {
        Printed printed = balance(List.of(), "01", "02", "03", "04", "06", "07", "08", "10", "11", "12");
        assertEquals(ExitStatus.FINE, printed.status());
        assertEquals(
                10,
                printed.out()
                        .lines()
                        .filter(line -> line.startsWith("The sheet balances"))
                        .count());
        assertEquals(List.of(), perhaps(printed));
    }

    @Test
    void a_tray_that_was_not_tared_is_offered_first_with_its_weight() {
        Printed printed = balance(List.of(), "05");
        assertEquals(ExitStatus.FINDINGS, printed.status());
        assertTrue(
                perhaps(printed)
                        .get(0)
                        .startsWith("Perhaps every weighing on the scale “bench” reads 0.342 kg too much"),
                printed.out());
    }

    @Test
    void cuts_weighed_before_trimming_are_offered_first_with_their_trim() {
        Printed printed = balance(List.of(), "09");
        assertEquals(ExitStatus.FINDINGS, printed.status());
        String first = perhaps(printed).get(0);
        assertTrue(
                first.contains("were weighed before trimming, and the trim was weighed again (leg / chump / fat;"),
                first);
    }
}
