package dev.gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.terminal.ExitStatus;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words of a stranger never act on the terminal, nor turn what stands beside them, whichever verb prints them. */
class HostileWordsTest {
    /** Clears the screen, colours, rings, turns the direction of reading, hides: as seven and as eight bit, and invisible. */
    static final List<String> STEERING = List.of(
            "\u001b[2J",
            "\u001b]0;title\u0007",
            "\u009b31m",
            "\b\b\b",
            "\u202e",
            "\u2066",
            "\u200b",
            "\u2028",
            "\ue000",
            "\udb40\udc41");

    @TempDir
    Path folder;

    /** Steering characters wherever words may stand in quotation marks. */
    static String quoted(String steering) {
        return """
                language 1
                source house, measured "tests @"
                species sheep {
                  piece leg, two per carcass
                }
                specification "Marram @ hogget" revision 3 for sheep, because "reason @"
                carcass cold, 20 kg to 24 kg
                grade season, winter, summer
                measure depth, in mm, 1 mm to 40 mm
                stream mince, saleable, lean 80 % visual
                note "caution @"
                estimate legs = 30 % - 0.1 % per mm × depth, source house
                cut leg 33.0 % ± 0.9 %, two per carcass, source house {
                  separate by saw "behind @ the hip"
                  leave cap "because @"
                  portion steak 180 g ± 10 g, remainder -> mince
                }
                allow nearly-a-piece "so @"
                cut legs 3 % -> mince
                rest -> mince
                """.replace("@", steering);
    }

    /** Steering characters wherever a name, a figure or a word of the language may stand. */
    static String bare(String steering) {
        return """
                language 1
                use "other@.cuts"
                use "catalogue:sh@eep"
                source ho@use, measured "tests"
                specification "Marram hogget" revision 3 for she@ep
                carcass co@ld, 20 kg to 24 k@g
                stream mi@nce, saleable
                cut le@g 33.0 %, two per car@cass -> mi@nce
                  reference UN@ECE 48@00
                note "never closed @
                @
                // @
                al@low unused-stream "so"
                rest -> min@ce
                """.replace("@", steering);
    }

    private List<List<String>> runs(String file) {
        List<List<String>> runs = new ArrayList<>();
        runs.add(List.of("check", "--all", "--allowed", file));
        runs.add(List.of("check", "--json", file));
        for (String form : List.of("text", "csv", "json")) {
            runs.add(List.of("yield", "--as", form, "--measure", "depth = 12 mm", file));
            runs.add(List.of("yield", "--as", form, "--carcasses", "3", file));
        }
        runs.add(List.of("estimate", "--measure", "depth = 12 mm", file));
        runs.add(List.of("origin", file, "leg"));
        runs.add(List.of("origin", "--as", "json", file));
        runs.add(List.of("tree", file));
        runs.add(List.of("blend", "--lean", "at least 70 % visual", file));
        runs.add(List.of("blend", "--as", "json", "--lean", "at least 70 % visual", file));
        runs.add(List.of("format", "--check", file));
        String carcasses = Run.write(folder, "kills.csv", "tag,cold weight (kg)\n=1+1,22\n");
        runs.add(List.of("carcasses", "--from", carcasses, file));
        runs.add(List.of("carcasses", "--as", "csv", "--carry", "tag", "--from", carcasses, file));
        runs.add(List.of("carcasses", "--as", "json", "--from", carcasses, file));
        return runs;
    }

    static void printsNothingThatActs(List<String> args) {
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals("", acting(run.out()), () -> "printed by " + args);
        assertEquals("", acting(run.err()), () -> "told by " + args);
    }

    /** The numbers of the characters that a terminal obeys, that turn the direction of reading, or that cannot be seen. */
    private static String acting(String printed) {
        return printed.codePoints()
                .filter(c -> c != '\n')
                .filter(c -> switch (Character.getType(c)) {
                    case Character.CONTROL,
                            Character.FORMAT,
                            Character.PRIVATE_USE,
                            Character.SURROGATE,
                            Character.LINE_SEPARATOR,
                            Character.PARAGRAPH_SEPARATOR -> true;
                    default -> false;
                })
                .mapToObj(Integer::toHexString)
                .distinct()
                .collect(Collectors.joining(" "));
    }

    @Test
    void words_in_quotation_marks_are_shown_and_do_nothing() {
        for (String steering : STEERING) {
            String file = Run.write(folder, "hogget.cuts", quoted(steering));
            assertEquals(ExitStatus.FINE, Run.of("check", file).status());
            runs(file).forEach(HostileWordsTest::printsNothingThatActs);
        }
    }

    @Test
    void names_figures_and_words_of_the_language_are_shown_and_do_nothing() {
        for (String steering : STEERING) {
            String file = Run.write(folder, "hogget.cuts", bare(steering));
            assertNotEquals(ExitStatus.FINE, Run.of("check", file).status());
            runs(file).forEach(HostileWordsTest::printsNothingThatActs);
        }
    }

    @Test
    void a_tree_from_a_stranger_is_shown_and_does_nothing() {
        String sound =
                Run.of("tree", Run.write(folder, "sound.cuts", quoted("q"))).out();
        for (String steering : STEERING) {
            String escaped =
                    steering.chars().mapToObj(c -> String.format("\\u%04x", c)).collect(Collectors.joining());
            for (String sly : List.of(sound.replace("q", escaped), sound.replace("leg", "l" + escaped + "eg"))) {
                String file = Run.write(folder, "tree.json", sly);
                runs(file).forEach(HostileWordsTest::printsNothingThatActs);
            }
        }
    }

    @Test
    void names_of_files_are_shown_and_do_nothing() {
        for (String steering : List.of("\u001b[2J", "\u202e", "\n", "\u0007")) {
            for (String ending : List.of(".cuts", ".json", ".csv", "")) {
                runs(folder + "/sly" + steering + ending).forEach(HostileWordsTest::printsNothingThatActs);
            }
        }
    }

    @Test
    void what_is_asked_for_is_shown_and_does_nothing() {
        String file = Run.write(folder, "hogget.cuts", quoted("q"));
        for (String sly : STEERING) {
            List<List<String>> asked = List.of(
                    List.of("y" + sly),
                    List.of("check", "--" + sly, file),
                    List.of("yield", "--weight", "22 k" + sly + "g cold", file),
                    List.of("yield", "--unit", sly, file),
                    List.of("yield", "--as", sly, file),
                    List.of("yield", "--given", sly + " = winter", file),
                    List.of("yield", "--given", "season = " + sly, file),
                    List.of("yield", "--work", "leg = " + sly, file),
                    List.of("yield", "--measure", sly + " = 12 mm", file),
                    List.of("yield", "--tree", folder + "/none/" + sly, file),
                    List.of("origin", file, sly),
                    List.of("catalogue", "sh" + sly + "eep"),
                    List.of("catalogue", "sheep", "l" + sly + "eg"),
                    List.of("explain", sly),
                    List.of("completion", sly),
                    List.of("blend", "--tub", sly + " = 120 kg, lean 80 % visual", "--lean", "at least 75 % visual"),
                    List.of("blend", "--tub", "a = 120 kg, lean 80 % " + sly, "--lean", sly),
                    List.of("packs", "--nominal", sly, "--weights", sly),
                    List.of("packs", "--test", sly, "--nominal", "200 g", "--weights", "200 g 201 g"),
                    List.of("carcasses", "--from", sly + ".csv", "--carry", sly, file));
            asked.forEach(HostileWordsTest::printsNothingThatActs);
        }
    }

    @Test
    void a_file_of_carcasses_is_shown_and_does_nothing() {
        String file = Run.write(folder, "hogget.cuts", Run.HOGGET);
        for (String sly : STEERING) {
            String cells = "tag,cold weight (kg)," + sly + "\n" + sly + ",22," + sly + "\na," + sly + ",\nb,22 k" + sly
                    + "g,\n\"" + sly + ",22,\n";
            String carcasses = Run.write(folder, "kills.csv", cells);
            String out = folder.resolve("out.csv").toString();
            for (String form : List.of("text", "csv", "json")) {
                printsNothingThatActs(
                        List.of("carcasses", "--as", form, "--carry", "tag", "--to", out, "--from", carcasses, file));
            }
        }
    }

    /** Only where a sheet itself is asked for does it come as it is, so that it can be written to a file. */
    @Test
    void laying_out_keeps_a_sheet_as_it_is() {
        String file = Run.write(folder, "hogget.cuts", quoted("\u202e"));
        assertTrue(Run.of("format", file).out().contains("\u202e"));
    }

    @Test
    void no_cell_begins_a_formula() {
        String sound =
                Run.of("tree", Run.write(folder, "sound.cuts", Run.HOGGET)).out();
        for (String sign : List.of("=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20")) {
            String file = Run.write(folder, "tree.json", sound.replace("\"leg\"", "\"" + sign + "cmd;" + sign + "1\""));
            for (List<String> verb : List.of(List.of("yield"), List.of("yield", "--carcasses", "3"), carcasses())) {
                List<String> args = new ArrayList<>(verb);
                Collections.addAll(args, "--as", "csv", file);
                Run run = Run.of(args.toArray(String[]::new));
                assertEquals(ExitStatus.FINE, run.status(), run.err());
                assertTrue(run.out().contains("'" + sign + "cmd;"), run.out());
                run.out()
                        .lines()
                        .forEach(line -> assertTrue(!line.contains("," + sign + "c") && !line.startsWith(sign)));
                assertTrue(run.out().lines().noneMatch(line -> line.matches(".*(^|,)[^\",]*;.*")), run.out());
            }
        }
    }

    private List<String> carcasses() {
        return List.of("carcasses", "--from", Run.write(folder, "kills.csv", "tag,cold weight (kg)\n=1+1,22\n"));
    }
}
