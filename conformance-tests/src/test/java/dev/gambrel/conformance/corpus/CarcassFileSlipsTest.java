package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.batches.Batch;
import dev.gambrel.batches.BatchCode;
import dev.gambrel.batches.BatchFiles;
import dev.gambrel.batches.BatchOrder;
import dev.gambrel.batches.BatchResult;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.working.Working;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is wrong in a file of carcasses, for hogget of 20 kg to 24 kg cold, is told as expected. */
class CarcassFileSlipsTest {
    private static final String TWO_COLUMNS = "tag,cold weight (kg)\n";

    /** A file with one slip, and the codes that tell it. */
    enum Slip {
        NOTHING_AT_ALL("", "G1701"),
        WEIGHT_WITHOUT_A_BASIS("tag,weight\newe 7,22\n", "G1702"),
        UTF_16_WITHOUT_A_MARK("\0c\0o\0l\0d\0 \0w\0e\0i\0g\0h\0t\n", "G1713"),
        WEIGHT_TWICE("cold weight (kg),Cold carcass weight (lb)\n22,49\n", "G1703"),
        MEASURE_TWICE("cold weight (kg),depth (mm),Depth\n22,9,9\n", "G1703"),
        WEIGHT_IN_MILLIMETRES("cold weight (mm)\n22\n", "G1704"),
        DEPTH_IN_KILOGRAMS("cold weight (kg),depth (kg)\n22,9\n", "G1704"),
        NO_TAG("number,cold weight (kg)\n7,22\n", "G1705"),
        HEADING_LEFT_OPEN("tag,\"cold weight (kg)\n7,22\n", "G1706"),
        LIVE_WEIGHTS("tag,live weight (kg)\n7,45\n", "G1001"),
        COMMA_WITHOUT_MARKS(TWO_COLUMNS + "ewe 7,22,4\n", "G1710"),
        CELL_MISSING(TWO_COLUMNS + "ewe 7\n", "G1710"),
        MARK_LEFT_OPEN(TWO_COLUMNS + "\"ewe 7,22.4\newe 8,22.4\n", "G1711"),
        LINE_BREAKS_LOST(TWO_COLUMNS + "ewe 7," + " ".repeat(4096) + "\n", "G1712"),
        TAG_IN_AN_OLD_ENCODING(TWO_COLUMNS + "h\u00e9 7,22.4\n", "G1713"),
        NEVER_WEIGHED(TWO_COLUMNS + "ewe 7,\n", "G1714"),
        CONDEMNED(TWO_COLUMNS + "ewe 7,condemned\n", "G1715"),
        THOUSAND_OR_ONE(TWO_COLUMNS + "ewe 7,\"1,025\"\n", "G1716"),
        UNIT_NOWHERE("tag,cold weight\newe 7,22.4\n", "G1717"),
        WEIGHT_OF_MILLIMETRES(TWO_COLUMNS + "ewe 7,22.4 mm\n", "G1718"),
        SEASON_UNKNOWN("tag,cold weight (kg),season\newe 7,22.4,spring\n", "G1719"),
        SCORE_UNKNOWN("tag,cold weight (kg),muscling\newe 7,22.4,fair\n", "G1719"),
        NEGATIVE(TWO_COLUMNS + "ewe 7,-22.4\n", "G1004"),
        POINT_LOST(TWO_COLUMNS + "ewe 7,224000\n", "G1005"),
        POUNDS_IN_THE_KILOGRAM_COLUMN(TWO_COLUMNS + "ewe 7,47.4\newe 8,48.1\n", "G1002 G1002"),
        KILOGRAMS_IN_THE_POUND_COLUMN("tag,cold weight (lb)\newe 7,22.4\n", "G1002"),
        FOUR_ALIKE_AND_THREE_TOLD(TWO_COLUMNS + "a,x\nb,x\nc,x\nd,x\n", "G1715 G1715 G1715");

        private final String file;
        private final String codes;

        Slip(String file, String codes) {
            this.file = file;
            this.codes = codes;
        }
    }

    private static final CutTree TREE = new SpecCompiler()
            .compile(new SourceText("hogget.cuts", Sheets.hogget("""
                            grade season, summer, winter
                            measure depth, in mm
                            measure muscling, 1 = thin, 2 = average, 3 = thick
                            cut leg 33 %, two per carcass
                            rest -> mince
                            """)), Sources.none())
            .orElseThrow()
            .tree();

    private static Result<BatchResult> run(Slip slip) {
        Charset charset = slip == Slip.TAG_IN_AN_OLD_ENCODING ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
        boolean carries = slip == Slip.NO_TAG || slip == Slip.TAG_IN_AN_OLD_ENCODING;
        BatchOrder order = carries ? BatchOrder.PLAIN.carrying(TradeName.of("tag")) : BatchOrder.PLAIN;
        try {
            return Batch.run(
                    TREE,
                    Working.AS_WRITTEN,
                    order,
                    BatchFiles.reading("kills.csv", new ByteArrayInputStream(slip.file.getBytes(charset))));
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
    }

    private static List<Diagnostic> found(Slip slip) {
        Result<BatchResult> result = run(slip);
        return result.value().map(BatchResult::shown).orElse(result.diagnostics());
    }

    @ParameterizedTest
    @EnumSource
    void a_slip_is_told_as_expected(Slip slip) {
        List<Diagnostic> found = found(slip);
        assertEquals(slip.codes, found.stream().map(each -> each.code().id()).collect(Collectors.joining(" ")));
        Corpus.hold(
                Corpus.report(found),
                Corpus.folder("carcasses").resolve(slip.name().toLowerCase(Locale.ROOT) + ".expected"));
    }

    @Test
    void every_kind_of_finding_about_a_file_has_a_slip() {
        Set<String> told = Arrays.stream(Slip.values())
                .flatMap(slip -> found(slip).stream())
                .map(finding -> finding.code().id())
                .collect(Collectors.toCollection(TreeSet::new));
        Stream.of(BatchCode.values()).forEach(code -> assertEquals(true, told.contains(code.id()), code.id()));
    }

    @Test
    void a_row_of_as_many_characters_as_are_taken_is_taken() {
        String row = "ewe 7,22.4" + " ".repeat(4096 - 10);
        assertEquals(1, result(TWO_COLUMNS + row + "\n").sums().carcasses());
        assertEquals(1, result(TWO_COLUMNS + row + " \n").refused());
    }

    @Test
    void a_heading_of_as_many_columns_as_are_taken_is_taken() {
        String columns = "cold weight (kg)" + ",x".repeat(255);
        assertEquals(1, result(columns + "\n22" + ",".repeat(255) + "\n").sums().carcasses());
        assertEquals(
                "G1706",
                run(columns + ",x\n").diagnostics().stream()
                        .map(finding -> finding.code().id())
                        .collect(Collectors.joining()));
    }

    @Test
    void a_grade_that_the_run_gives_is_not_read_from_the_file() throws IOException {
        Working winter = Working.AS_WRITTEN.given(TradeName.of("season"), TradeName.of("winter"));
        byte[] file = "cold weight (kg),season\n22,spring\n".getBytes(StandardCharsets.UTF_8);
        BatchResult result = Batch.run(
                        TREE, winter, BatchOrder.PLAIN, BatchFiles.reading("kills.csv", new ByteArrayInputStream(file)))
                .orElseThrow();
        assertEquals(List.of("season"), result.unused());
        assertEquals(0, result.refused());
    }

    @Test
    void semicolons_and_decimal_commas_and_a_byte_order_mark_are_read() {
        BatchResult result = result("\ufefftag;cold weight (kg);season\newe 7;22,4;winter\r\newe 8;21,6;\r\n");
        assertEquals(44, result.sums().line(0).sum(), 1e-12);
        assertEquals(List.of("tag"), result.unused());
    }

    @Test
    void pounds_and_ounces_are_read() {
        assertEquals(
                21.48893852875,
                result("cold weight\n47 lb 6 oz\n").sums().line(0).sum(),
                1e-12);
    }

    private static BatchResult result(String file) {
        return run(file).orElseThrow();
    }

    private static Result<BatchResult> run(String file) {
        try {
            return Batch.run(
                    TREE,
                    Working.AS_WRITTEN,
                    BatchOrder.PLAIN,
                    BatchFiles.reading("kills.csv", new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8))));
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
    }
}
