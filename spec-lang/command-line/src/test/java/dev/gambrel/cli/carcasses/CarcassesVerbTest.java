package dev.gambrel.cli.carcasses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CarcassesVerbTest {
    private static final String KILLS = """
            tag,cold weight (kg),remarks
            ewe 7,22,fine
            ewe 8,n/a,
            =ewe 9,21,
            """;

    @TempDir
    Path folder;

    private String hogget = "";
    private String kills = "";
    private String out = "";
    private String refused = "";

    @BeforeEach
    void write() {
        hogget = Run.write(folder, "hogget.cuts", Run.HOGGET);
        kills = Run.write(folder, "kills.csv", KILLS);
        out = folder.resolve("out.csv").toString();
        refused = folder.resolve("refused.csv").toString();
    }

    private static String read(String file) throws IOException {
        return Files.readString(Path.of(file));
    }

    @Test
    void what_each_gives_is_written_and_what_all_give_is_printed() throws IOException {
        Run run = Run.of(
                "carcasses",
                hogget,
                "--from",
                kills,
                "--to",
                out,
                "--refused",
                refused,
                "--carry",
                "tag",
                "--decimals",
                "1");
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertEquals("""
                line,tag,"carcass, kg","saleable, kg","by-product, kg","waste, kg","loss, kg","home not stated, kg","products, kg","stream mince, kg"
                2,ewe 7,22.0,22.0,0.0,0.0,0.0,0.0,7.3,14.7
                4,'=ewe 9,21.0,21.0,0.0,0.0,0.0,0.0,6.9,14.1
                """, read(out));
        assertEquals("""
                line,code,reason,row
                3,G1715,"The cold weight is “n/a”, which is no figure that can be read.","ewe 8,n/a,"
                """, read(refused));
        assertTrue(
                run.out().contains("carcass                     43.0  21.5            0.71           0.00"), run.out());
        assertTrue(run.out().contains("\nExpected for 2 carcasses together\n\n"), run.out());
        assertTrue(
                run.out().contains("± is one standard deviation: from one to another, how far carcasses differ"),
                run.out());
        assertTrue(run.out().contains("Figures are estimates from the shares in the specification"), run.out());
        assertTrue(run.out().contains("3 carcasses: 2 worked out, 1 refused."), run.out());
        assertTrue(run.out().contains("Columns not used: remarks."), run.out());
        assertTrue(run.err().contains("kills.csv, line 3"), run.err());
    }

    @Test
    void all_rows_worked_out_is_fine() {
        String fine = Run.write(folder, "fine.csv", "cold weight (kg)\n22\n");
        assertEquals(
                ExitStatus.FINE, Run.of("carcasses", hogget, "--from", fine).status());
    }

    /** 55 lb 7 oz are 25.14602701375 kg, with a pound of 0.45359237 kg. */
    @Test
    void pounds_outside_the_band_are_told_in_as_many_figures_as_a_scale_has() {
        String heavy = Run.write(folder, "heavy.csv", "cold weight (kg)\n55 lb 7 oz\n");
        String err = Run.of("carcasses", hogget, "--from", heavy).err();
        assertTrue(err.contains("The carcass weighs 25.1460 kg, outside the 20 kg to 24 kg"), err);
    }

    @Test
    void where_no_carcass_could_be_worked_out_no_weights_of_nothing_are_printed() {
        String none = Run.write(folder, "none.csv", "cold weight (kg)\nn/a\n");
        Run run = Run.of("carcasses", hogget, "--from", none);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(
                run.out().startsWith("No carcass could be worked out.\n\n1 carcass: 0 worked out, 1 refused.\n"),
                run.out());
        assertFalse(run.out().contains("0.00"), run.out());
    }

    /** What is saleable is the products and the mince: of 43 kg, 33 % and 67 %. */
    @Test
    void streams_stand_under_what_becomes_of_them() {
        String out =
                Run.of("carcasses", hogget, "--from", kills, "--decimals", "1").out();
        assertTrue(
                out.matches("(?s).*\nwhere it all goes\n  saleable +43\\.0 .*\n    products +14\\.2 .*"
                        + "\n    stream mince +28\\.8 .*"),
                out);
    }

    @Test
    void lines_of_the_specification_may_be_printed() {
        Run run = Run.of(
                "carcasses", hogget, "--from", kills, "--to", "-", "--each", "lines", "--as", "csv", "--threads", "3");
        assertEquals("""
                line,"carcass, kg","leg, kg","rest, kg"
                2,22.00,7.26,14.74
                4,21.00,6.93,14.07
                """, run.out());
        assertTrue(run.err().contains("part,\"all carcasses, kg\""), run.err());
    }

    @Test
    void carcasses_may_be_handed_to_the_program() {
        Run run = Run.reading(KILLS, "carcasses", hogget, "--from", "-", "--as", "json");
        assertTrue(run.out().contains("\"worked out\" : 2"), run.out());
        assertTrue(run.err().contains("standard input, line 3"), run.err());
    }

    @Test
    void a_heading_that_is_wrong_leaves_no_file_behind() throws IOException {
        String wrong = Run.write(folder, "wrong.csv", "tag,weight\newe 7,22\n");
        Run run = Run.of("carcasses", hogget, "--from", wrong, "--to", out);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.err().contains("G1702"), run.err());
        assertFalse(Files.exists(Path.of(out)));
        try (var files = Files.list(folder)) {
            assertEquals(
                    0, files.filter(file -> file.toString().endsWith(".part")).count());
        }
    }

    @Test
    void the_first_row_refused_ends_it_where_that_is_asked() {
        Run run = Run.of("carcasses", hogget, "--from", kills, "--stop-at-first");
        assertTrue(run.out().contains("2 carcasses: 1 worked out, 1 refused, with which it was ended."), run.out());
    }

    @Test
    void what_is_not_there_cannot_be_read() {
        Run run =
                Run.of("carcasses", hogget, "--from", folder.resolve("none.csv").toString());
        assertEquals(ExitStatus.COULD_NOT, run.status());
    }

    @Test
    void nothing_is_written_over_what_is_read() {
        assertEquals(
                ExitStatus.WRONG_USAGE,
                Run.of("carcasses", hogget, "--from", kills, "--to", kills).status());
        assertEquals(
                ExitStatus.WRONG_USAGE,
                Run.of("carcasses", hogget, "--from", kills, "--to", hogget).status());
        assertEquals(
                ExitStatus.WRONG_USAGE,
                Run.of("carcasses", hogget, "--from", kills, "--to", out, "--refused", out)
                        .status());
    }

    @Test
    void one_file_by_two_names_is_one_file() {
        String other = folder.resolve("..")
                .resolve(folder.getFileName())
                .resolve("out.csv")
                .toString();
        Run run = Run.of("carcasses", hogget, "--from", kills, "--to", out, "--refused", other);
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("cannot go to one file"), run.err());
    }

    @Test
    void rows_refused_are_not_written_to_a_file_called_minus() {
        Run run = Run.of("carcasses", hogget, "--from", kills, "--refused", "-");
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
    }

    @Test
    void what_a_run_that_was_broken_off_left_is_named() {
        Run.write(folder, ".out.csv.part", "");
        Run run = Run.of("carcasses", hogget, "--from", kills, "--to", out);
        assertEquals(ExitStatus.COULD_NOT, run.status());
        assertTrue(run.err().contains("or one was broken off and left"), run.err());
    }

    @Test
    void each_of_no_carcasses_weighs_nothing_that_can_be_told() {
        String none = Run.write(folder, "none.csv", "cold weight (kg)\n");
        String csv = Run.of("carcasses", hogget, "--from", none, "--as", "csv").out();
        assertTrue(csv.contains("\ncarcass,0.00,,"), csv);
        String json =
                Run.of("carcasses", hogget, "--from", none, "--as", "json").out();
        assertFalse(json.contains("\"each\""), json);
    }

    @Test
    void wrong_words_are_wrong_usage() {
        for (String[] more :
                new String[][] {{"--threads", "0"}, {"--each", "cuts"}, {"--as", "xml"}, {"--threads", "999"}}) {
            Run run = Run.of("carcasses", hogget, "--from", kills, "--to", out, more[0], more[1]);
            assertEquals(ExitStatus.WRONG_USAGE, run.status(), more[1]);
        }
    }

    @Test
    void progress_is_shown_on_a_terminal_alone() {
        assertTrue(Run.inColour("carcasses", hogget, "--from", kills).err().contains("100 %, 3 carcasses"));
        assertFalse(Run.of("carcasses", hogget, "--from", kills).err().contains("100 %"));
    }
}
