package dev.gambrel.cli;

import static dev.gambrel.cli.HostileWordsTest.STEERING;
import static dev.gambrel.cli.HostileWordsTest.bare;
import static dev.gambrel.cli.HostileWordsTest.quoted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.terminal.ExitStatus;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same where two texts are held against one another, and where weigh sheets, prices and numbers stand beside a specification. */
class HostileWordsBesideTest {
    private static final String SHEET = """
            specification,Marram @ hogget
            revision,3
            date,@
            lot,@
            cutter,@
            scale,ben@ch,5 g,1 g
            carcass,22.00 kg,cold
            part,pieces,gross,tare,unit
            leg,pair,%s,0.340,kg
            legs,all,0.660,0,kg
            carcass / rest,all,14.080,0,kg
            """;
    private static final String FAULTY = """
            spec@,x
            revision,3@
            scale,bench,5 @g,1 g,@
            carcass,22.00 k@g,co@ld
            part,pieces,gross,tare,unit,@
            le@g,pa@ir,7@,0@,k@g
            "never closed @
            leg,pair,7,600,@,@,@,@
            """;
    private static final String PRICES = """
            currency,cro@wns
            part,price,unit
            leg,9.20,kg
            legs,5.00,kg
            """;
    private static final String FAULTY_PRICES = """
            cur@rency,crowns
            part,price,unit,@
            le@g,9@,k@g
            leg,,kg
            leg,-@1,lb
            """;

    @TempDir
    Path folder;

    private static void doNothing(List<List<String>> runs) {
        runs.forEach(HostileWordsTest::printsNothingThatActs);
    }

    private static String escaped(String steering) {
        return steering.chars().mapToObj(c -> String.format("\\u%04x", c)).collect(Collectors.joining());
    }

    private static String json(String steering, String gross) {
        return """
                {"format": "gambrel weigh sheet", "version": 1, "specification": "Marram @ hogget", "revision": 3,
                 "date": "@", "lot": "@", "cutter": "@",
                 "scales": [{"name": "ben@ch", "division": "5 g", "tare": "1 g"}],
                 "carcass": {"weight": "22.00 kg", "basis": "cold"},
                 "parts": [{"part": "leg", "pieces": "pair", "gross": %s, "tare": 0.340, "unit": "kg"},
                           {"part": "legs", "pieces": "all", "gross": 0.660, "tare": 0, "unit": "kg"},
                           {"part": "carcass / rest", "pieces": "all", "gross": 14.080, "tare": 0, "unit": "kg"}]}
                """.replace("%s", gross).replace("@", escaped(steering));
    }

    private List<List<String>> runs(String spec, String sheet, String prices) {
        List<List<String>> runs = new ArrayList<>();
        for (String form : List.of("text", "json")) {
            runs.add(List.of("balance", "--as", form, spec, "--sheet", sheet, "--prices", prices));
            runs.add(List.of("drift", "--as", form, spec, "--sheet", sheet, sheet));
        }
        return runs;
    }

    @Test
    void words_of_a_weigh_sheet_and_of_prices_are_shown_and_do_nothing() {
        String right = "7.600";
        String wrong = "5.600";
        for (String sly : STEERING) {
            String spec = Run.write(folder, "hogget.cuts", quoted(sly));
            String prices = Run.write(folder, "prices.csv", PRICES.replace("@", sly));
            for (String gross : List.of(right, wrong)) {
                String csv = Run.write(
                        folder, "monday.csv", SHEET.replace("%s", gross).replace("@", sly));
                String json = Run.write(folder, "monday.json", json(sly, gross));
                doNothing(runs(spec, csv, prices));
                doNothing(runs(spec, json, prices));
            }
        }
    }

    /** So that the words above are printed and not merely refused. */
    @Test
    void without_such_words_both_sheets_balance_and_have_a_worth() {
        String spec = Run.write(folder, "hogget.cuts", quoted("q"));
        String prices = Run.write(folder, "prices.csv", PRICES.replace("@", "q"));
        String csv =
                Run.write(folder, "monday.csv", SHEET.replace("%s", "7.600").replace("@", "q"));
        String json = Run.write(folder, "monday.json", json("q", "7.600"));
        Run run = Run.of("balance", spec, "--sheet", csv, json, "--prices", prices);
        assertEquals(ExitStatus.FINE, run.status(), run.err() + run.out());
        assertTrue(run.out().contains("Worth, in croqwns"), run.out());
    }

    @Test
    void faulty_sheets_and_prices_are_told_and_do_nothing() {
        for (String sly : STEERING) {
            String spec = Run.write(folder, "hogget.cuts", quoted(sly));
            String sheet = Run.write(folder, "monday.csv", FAULTY.replace("@", sly));
            String prices = Run.write(folder, "prices.csv", FAULTY_PRICES.replace("@", sly));
            doNothing(runs(spec, sheet, prices));
            String sound = json("q", "7.600");
            for (String word : List.of("leg", "parts", "gross", "pair", "kg", "5 g", "22.00 kg", "weigh sheet")) {
                String faulty = sound.replace(word, word + escaped(sly));
                doNothing(runs(spec, Run.write(folder, "monday.json", faulty), prices));
                doNothing(runs(spec, Run.write(folder, "monday.json", sound.replace(word, word + sly)), prices));
            }
            doNothing(runs(Run.write(folder, "bare.cuts", bare(sly)), sheet, prices));
        }
    }

    @Test
    void two_texts_held_against_one_another_are_shown_and_do_nothing() {
        String plain = Run.write(folder, "plain.cuts", quoted("q").replace("33.0 %", "32.0 %"));
        for (String sly : STEERING) {
            String house = Run.write(folder, "hogget.cuts", quoted(sly));
            String bare = Run.write(folder, "bare.cuts", bare(sly));
            String buyer = Run.write(folder, "wanted.cuts", """
                    language 1
                    requirement "legs @ wanted" revision 1 for sheep
                    cut leg {
                      separate by saw "behind @ the hip"
                      note "so @"
                    }
                    """.replace("@", sly));
            List<List<String>> runs = new ArrayList<>();
            for (String other : List.of(plain, bare)) {
                for (String form : List.of("text", "json")) {
                    runs.add(List.of("compare", "--all", "--as", form, house, other));
                    runs.add(List.of("compare", "--all", "--as", form, other, house));
                    runs.add(List.of("conform", "--as", form, other, "--to", buyer));
                }
            }
            String page = folder.resolve("answer.html").toString();
            runs.add(List.of("conform", "--as", "csv", house, "--to", buyer, "--html", page));
            runs.add(List.of("conform", house, "--to", bare));
            doNothing(runs);
        }
    }

    @Test
    void what_is_asked_for_is_shown_and_does_nothing() {
        String file = Run.write(folder, "hogget.cuts", quoted("q"));
        String sheet =
                Run.write(folder, "monday.csv", SHEET.replace("%s", "7.600").replace("@", "q"));
        for (String sly : STEERING) {
            doNothing(List.of(
                    List.of("number", sly),
                    List.of("number", "UNECE " + sly),
                    List.of("number", "IMPS 112", "--weight", "8 l" + sly + "b"),
                    List.of("number", "IMPS 112", "--range", sly, "--edition", sly),
                    List.of("number", "(01)" + sly + "(10)A1", "--year", sly),
                    List.of("number", "--as", "json", "(10)" + sly),
                    List.of("compare", "--accept", sly, file, file),
                    List.of("compare", "--weight", sly, file, file),
                    List.of("compare", file, sly + ".cuts"),
                    List.of("conform", file, "--to", sly + ".json"),
                    List.of("conform", file, "--to", file, "--match", sly + " = " + sly),
                    List.of("conform", file, "--to", file, "--carcass", sly),
                    List.of("conform", file, "--to", file, "--html", folder + "/none/" + sly + ".html"),
                    List.of("balance", file, "--sheet", sly + ".csv", sly + ".json"),
                    List.of("balance", file, "--sheet", sheet, "--prices", sly + ".csv"),
                    List.of("balance", file, "--sheet", sheet, "--work", "leg = " + sly),
                    List.of("drift", file, "--sheet", sheet, "--first", sly)));
        }
    }
}
