package dev.gambrel.cli.argument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.verb.WrongUsage;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a run asks for, as it is typed. */
class WorkArgumentTest {
    private static final String SHEET = """
            language 1
            species sheep
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 24 kg
            grade season, summer, winter
            stream mince, saleable
            cut leg 33.0 % ± 0.9 %, two per carcass {
              worked as whole leg, as a rule
              worked as steaks
              worked as mince -> mince
              worked as winter leg, when season is winter
            }
            rest -> mince
            """;

    @TempDir
    Path folder;

    private Run asked(String... options) {
        String[] args = new String[options.length + 2];
        args[0] = "yield";
        args[1] = Run.write(folder, "hogget.cuts", SHEET);
        System.arraycopy(options, 0, args, 2, options.length);
        return Run.of(args);
    }

    private static void says(String line, Run run) {
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().replaceAll(" +", " ").contains(line), run.out());
    }

    @Test
    void the_report_says_how_each_cut_is_worked_and_why() {
        says("leg / whole leg 100.0 100.0 as a rule", asked());
        says("leg / steaks 100.0 100.0 asked for", asked("--work", "leg = steaks"));
        says("leg / winter leg 100.0 100.0 when season is winter", asked("--given", "season = winter"));
        Run mix = asked("--work", "leg=steaks 25 %, Whole  Leg 75%");
        says("leg / whole leg 75.0 75.0 asked for", mix);
        says("leg / steaks 25.0 25.0 asked for", mix);
    }

    @Test
    void the_json_says_it_too() {
        Run run = asked("--as", "json", "--work", "leg = steaks 25 %, whole leg 75 %");
        assertTrue(run.out().contains("\"workedAs\""), run.out());
        assertTrue(run.out().contains("\"pieces\" : 0.5") || run.out().contains("\"pieces\": 0.5"), run.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "leg = stakes | G1133",
                "leg = steaks 25 % | G1134",
                "leg = steaks 25 %, mince 25 % | G1134",
                "lag = steaks | G1131"
            })
    void what_cannot_be_done_is_a_finding(String work, String code) {
        Run run = asked("--work", work);
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.err().contains(code), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"leg", "leg = ", "= steaks", "leg = steaks, mince", "leg = a = b", "leg / = steaks"})
    void what_cannot_be_read_is_told_how_to_write_it(String work) {
        assertThrows(WrongUsage.class, () -> WorkArgument.order(work));
        Run run = asked("--work", work);
        assertTrue(run.err().contains("write it such as"), run.err());
    }
}
