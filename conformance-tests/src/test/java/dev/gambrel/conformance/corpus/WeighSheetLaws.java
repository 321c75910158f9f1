package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.cuttingtest.PartReading;
import dev.gambrel.yields.cuttingtest.WhereItWent;
import dev.gambrel.yields.working.Working;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What holds of every weigh sheet, right or wrong. */
class WeighSheetLaws {
    private static final CutTree TREE = new SpecCompiler()
            .compile(new SourceText("hogget.cuts", Sheets.hogget("""
                            cut leg, two per carcass, 33.0 % ± 0.9 % {
                              cut chump 15.0 % ± 0.6 %
                              loss saw 0.5 % ± 0.1 %
                              rest -> mince
                            }
                            cut neck, one per carcass, 4.0 % ± 0.3 %
                            loss drip 0.5 % ± 0.1 %
                            rest -> mince
                            """)), Sources.none())
            .orElseThrow()
            .tree();
    private static final String HEAD = """
            specification,Marram hogget
            revision,3
            scale,bench,5 g,1 g
            carcass,22.00 kg,cold
            part,pieces,gross,tare,unit
            """;
    private static final List<String> ROWS = List.of(
            "leg,pair,7.600,0.340,kg",
            "chump,pair,1.090,0,kg",
            "leg / rest,all,6.135,0,kg",
            "neck,single,0.880,0,kg",
            "carcass / rest,all,13.750,0,kg");
    private static final List<String> SCRAPS = List.of(
            ",",
            ";",
            "\"",
            "\n",
            "\r\n",
            "part",
            "pieces",
            "gross",
            "tare",
            "unit",
            "kg",
            "leg",
            "-",
            "7,600",
            "\u0000",
            "\u202e",
            "carcass,",
            "scale,",
            "9".repeat(40),
            "1e9",
            "/",
            "trimmed",
            "single",
            " ",
            "\ud800",
            "NaN",
            "lb");

    private static Result<WeighSheet> read(String text) {
        return WeighSheet.read(new SourceText("monday.csv", text), TREE, Working.AS_WRITTEN);
    }

    private static List<PartReading> readings(String table) {
        return read(table).orElseThrow().readings();
    }

    private static String sheet(List<String> rows) {
        return HEAD + String.join("\n", rows) + "\n";
    }

    @Property(tries = 500)
    void whatever_stands_in_a_file_it_is_read_or_refused_with_reasons(
            @ForAll @Size(max = 60) List<@IntRange(max = 26) Integer> scraps, @ForAll boolean withHead) {
        StringBuilder text = new StringBuilder(withHead ? HEAD : "");
        scraps.forEach(scrap -> text.append(SCRAPS.get(scrap)));
        Result<WeighSheet> read = read(text.toString());
        assertTrue(read.value().isPresent() != Result.hasError(read.diagnostics()));
        Corpus.report(read.diagnostics());
    }

    @Property(tries = 20)
    void the_order_of_rows_does_not_matter(@ForAll Random random) {
        List<String> shuffled = new java.util.ArrayList<>(ROWS);
        Collections.shuffle(shuffled, random);
        WeighSheet sheet = read(sheet(shuffled)).orElseThrow();
        assertEquals(
                read(sheet(ROWS)).orElseThrow().test().reconciled().test(),
                sheet.test().reconciled().test());
    }

    @Example
    void what_becomes_of_the_carcass_differs_by_nothing_in_all() {
        double sum = WhereItWent.of(read(sheet(ROWS)).orElseThrow().test()).shares().stream()
                .mapToDouble(share -> share.difference().orElseThrow())
                .sum();
        assertEquals(0, sum, 22e-12);
    }

    @Example
    void grams_and_kilograms_semicolons_and_line_ends_and_empty_cells_are_alike() {
        List<PartReading> plain = readings(HEAD + "leg,pair,7.600,0.340,kg\n");
        assertEquals(plain, readings(HEAD + "leg,pair,7600,340,g\n"));
        assertEquals(plain, readings((HEAD + "leg,pair,7.600,0.340,kg\n").replace(',', ';')));
        assertEquals(plain, readings((HEAD + "leg,pair,7.600,0.340,kg\n").replace("\n", "\r\n")));
        assertEquals(plain, readings((HEAD + "leg,pair,7.600,0.340,kg\n\n").replace("\n", ",,,\n")));
        assertEquals(plain, readings(HEAD + "\"LEG \",Pair,7.600,0.340,KG\n"));
    }

    /** The other piece is taken to weigh and to err as the one that was weighed: twice the weight, twice the error. */
    @Example
    void a_single_piece_counts_twice_and_its_error_too() {
        double one = 0.005 * 0.005 / 12 + 0.001 * 0.001;
        PartReading pair = readings(HEAD + "leg,pair,7.260,0,kg\n").get(1);
        PartReading single = readings(HEAD + "leg,single,3.630,0,kg\n").get(1);
        assertEquals(pair.kilograms(), single.kilograms(), 1e-12);
        assertEquals(one, pair.variance(), 1e-18);
        assertEquals(4 * one, single.variance(), 1e-18);
        assertEquals(2, single.weighings().get(0).times());
    }

    @Example
    void a_side_holds_half_of_what_there_is_one_of_and_one_of_a_pair() {
        for (String part : Arrays.asList("neck", "leg")) {
            PartReading side = readings(HEAD + part + ",side,0.440,0,kg\n").get(1);
            assertEquals(0.880, side.kilograms(), 1e-12, part);
        }
    }
}
