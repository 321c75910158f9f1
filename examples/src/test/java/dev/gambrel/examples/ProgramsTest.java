package dev.gambrel.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.table.YieldTable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

@ResourceLock(Resources.SYSTEM_OUT)
class ProgramsTest {
    private interface Program {
        void run() throws IOException;
    }

    @Test
    void expected_weights_prints_mean_standard_deviation_and_range() throws IOException {
        // 22 × 0.33 × 0.21, and the exact variance of a product: L. A. Goodman, Journal of the American Statistical
        // Association 55, 1960.
        assertEquals("""
                both topsides: 1.5246 kg
                standard deviation: 0.0775 kg
                95 % range: 1.3728 to 1.6764 kg
                """, printed(() -> ExpectedWeights.main(new String[0])));
    }

    /** By hand: 42 × 8 points carry 25 × 2 and 14.3 × 20; the 21.7 kg left need 43.4 kg that are 10 points leaner. */
    @Test
    void blend_tubs_prints_what_goes_in_and_what_is_missing() throws IOException {
        assertEquals("""
                breast: 14300 g
                neck: 25000 g
                shoulder trim: 42000 g
                90 % lean to use up the rest: 43400 g
                """, printed(() -> BlendTubs.main(new String[0])));
    }

    @Test
    void a_tree_from_json_gives_the_same_figures_as_the_specification_in_words() throws IOException {
        byte[] json = Files.readAllBytes(Marram.file("topside.json"));
        CutTree tree = TreeJsonReader.read("topside.json", json).orElseThrow();
        assertEquals(printed(() -> ExpectedWeights.main(new String[0])), ExpectedWeights.topsides(tree, "22.0"));
    }

    @Test
    void the_json_is_written_as_the_library_writes_it() throws IOException {
        String json = Files.readString(Marram.file("topside.json"));
        CutTree tree = TreeJsonReader.read("topside.json", json.getBytes(StandardCharsets.UTF_8))
                .orElseThrow();
        assertEquals(json, TreeJsonWriter.write(tree));
    }

    @Test
    void tree_from_json_prints_the_table() throws IOException {
        String path = Marram.file("topside.json").toString();
        String table = printed(() -> TreeFromJson.main(new String[] {path}));
        assertTrue(table.startsWith(
                "Marram hogget topside, revision 1, sheep\nExpected for a carcass of 22.000 kg, weighed cold\n"));
        assertTrue(
                table.replaceAll(" +", " ").contains("topside 2 1.525 0.762 0.0775 1.373 to 1.676 21.00 6.93 product"),
                table);
    }

    /** Fewer than are expected: 40 hoggets give as many or more 19 times in 20. */
    @Test
    void what_may_be_promised_to_harbour_table_is_less_than_is_expected() throws IOException {
        String path = Marram.file("hogget.cuts").toString();
        assertEquals("""
                chump steak: 134 promised, 142.3 expected
                seam steak: 164 promised, 171.9 expected
                topside steak: 240 promised, 243.4 expected
                loin chop: 576 promised, 586.4 expected
                """, printed(() -> PromiseToABuyer.main(new String[] {path})));
    }

    /** 22 × 0.33. */
    @Test
    void a_tree_made_by_a_program_keeps_the_rules_and_gives_its_legs() throws IOException {
        assertEquals("both legs: 7.26 kg\n", printed(() -> TreeWithoutTheLanguage.main(new String[0])));
    }

    /** By hand: 20.0 to 23.9 kg in steps of 0.1, 25,000 of each, so 21.95 kg each; the legs are 33 % of it. */
    @Test
    void a_million_carcasses_give_the_same_on_any_number_of_threads() throws IOException {
        String report = printed(() -> MillionCarcasses.main(new String[0]));
        assertEquals("""
                1000000 carcasses
                saleable: 21950000.0 kg
                by-product: 0.0 kg
                waste: 0.0 kg
                loss: 0.0 kg
                home not stated: 0.0 kg
                products: 7243500.0 kg
                stream to be cut: 14706500.0 kg
                """, report);
    }

    @Test
    void a_house_specification_sent_as_json_gives_the_same_table() {
        CutTree tree = Marram.tree("hogget.cuts");
        String sent = TreeJsonWriter.write(tree);
        String expected = YieldTable.of(Yields.of(tree).forTypicalCarcass().orElseThrow(), Unit.KILOGRAM, 3)
                .text();
        assertEquals(expected, TreeFromJson.report("hogget.json", sent.getBytes(StandardCharsets.UTF_8)));
    }

    /** Nothing is lost: what cannot be worked out is told with its reason, and pounds among kilograms are asked about. */
    @Test
    void a_batch_gives_what_each_carcass_gives_and_tells_what_is_refused() throws IOException {
        String specification = Marram.file("hogget.cuts").toString();
        String carcasses = Marram.file("kills.csv").toString();
        List<String> lines = printed(() -> BatchOfCarcasses.main(new String[] {specification, carcasses}))
                .lines()
                .toList();
        assertEquals(
                List.of(
                        "hogget 4101",
                        "hogget 4102",
                        "hogget 4103",
                        "hogget 4104",
                        "hogget 4105",
                        "hogget 4106",
                        "hogget 4111"),
                lines.subList(1, 8).stream().map(line -> line.split(",")[1]).toList());
        assertEquals(
                "5,hogget 4104,21.489",
                String.join(",", Arrays.copyOf(lines.get(4).split(","), 3)));
        assertEquals(
                List.of("G1002", "G1714", "G1710", "G1715", "G1711", "G1002", "G1004"),
                lines.subList(8, 15).stream().map(line -> line.substring(0, 5)).toList());
        assertTrue(lines.get(8).contains("Were these pounds?"), lines.get(8));
        assertEquals("12 rows, 5 refused", lines.get(15));
    }

    @Test
    void a_file_that_is_no_tree_gets_a_finding_and_no_table() {
        String report = TreeFromJson.report("order.json", "{\"order\": 1}".getBytes(StandardCharsets.UTF_8));
        assertTrue(report.startsWith("error"), report);
        assertTrue(report.contains("order.json"), report);
    }

    /** By hand: forty carcasses stray by √40 of one, the means of twelve tests by 40 / √12 of one, so by √(40 / 12) = 1.83 of it. */
    @Test
    void forty_carcasses_have_weight_value_and_how_they_vary_together() throws IOException {
        String hogget = Marram.file("hogget.cuts").toString();
        assertEquals("""
                products, kg: 503.2, between carcasses ± 1.23, doubt ± 2.25
                their value: 5793.3, between carcasses ± 15.20, doubt ± 27.73
                correlation of the two: 0.96
                value of a kilogram: 11.51
                """, printed(() -> FortyCarcasses.main(new String[] {hogget})));
        Estimate one = Yields.of(Marram.tree("hogget.cuts"))
                .forTypicalCarcass()
                .orElseThrow()
                .products();
        assertEquals(503.2, 40 * one.mean(), 0.05);
        assertEquals(1.23, Math.sqrt(40 * one.spread().variance()), 0.005);
        assertEquals(2.25, 40 * Math.sqrt(one.spread().variance() / 12), 0.005);
    }

    private static String checked(String house, String buyer) throws IOException {
        String[] files = {Marram.file(house).toString(), Marram.file(buyer).toString()};
        return printed(() -> CheckBuyersRequirement.main(files));
    }

    @Test
    void what_harbour_table_requires_of_racks_is_undertaken() throws IOException {
        assertEquals("conforms\n", checked("hogget-undertaken.cuts", "racks-wanted.cuts"));
    }

    @Test
    void a_sheet_that_says_nothing_of_cold_or_age_is_not_shown_to_conform() throws IOException {
        String report = checked("hogget.cuts", "racks-wanted.cuts");
        assertTrue(report.contains("not stated: Asked: chilled. The house lays down nothing about it.\n"), report);
        assertTrue(report.endsWith("\nnot shown to conform\n"), report);
    }

    @Test
    void a_deer_steak_may_be_five_grams_too_light() throws IOException {
        String report = checked("fallow.cuts", "deer-steaks-wanted.cuts");
        assertTrue(
                report.contains(
                        "fails: Asked: 165 g to 180 g. The house lays down 160 g to 180 g, which allows 5 g less"
                                + " at the low end.\n"),
                report);
        assertTrue(report.endsWith("\ndoes not conform\n"), report);
    }

    private static String printed(Program program) throws IOException {
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        try {
            program.run();
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void the_word_of_an_order_is_looked_up_in_the_catalogue() {
        assertEquals("""
                hindquarter / rump and loin / sirloin butt: UNECE 2090, Handbook of Australian Meat 2090, IMPS 182
                hindquarter / rump and loin / short loin / striploin: UNECE 2140, Handbook of Australian Meat 2140, IMPS 180
                """, CutInTheCatalogue.meanings("cattle", "sirloin"));
        assertEquals("", CutInTheCatalogue.meanings("goat", "leg"));
    }

    /** Worked out by hand: 1 of 50 is under 191 g, 2 may be; 191 g and 1.96 times the spread of 5.014 g are 200.83 g. */
    @Test
    void a_batch_of_packs_is_judged_and_the_rules_say_where_they_stand() throws IOException {
        String path = Marram.file("packs-200-g.txt").toString();
        assertEquals("""
                batch accepted
                the mean: accepted, The Weights and Measures (Packaged Goods) Regulations 2006, SI 2006/659, Schedule 2, 4.5 to 4.7, as made (seen)
                T1: accepted, Directive 76/211/EEC, Annex II, 2.2.1, consolidated text, as on legislation.gov.uk (seen)
                T2: accepted, Directive 76/211/EEC, Annex I, 1.3, consolidated text, as on legislation.gov.uk (seen)
                aim at 200.9 g or more
                Check the law where the packs are made and sold before you act on this: rules differ by country and change.
                """, printed(() -> BatchOfPacks.main(new String[] {path})));
    }

    @Test
    void a_cutting_test_becomes_a_page_and_an_image(@TempDir Path folder) throws IOException {
        String[] args = {
            Marram.file("hogget.cuts").toString(),
            Path.of("weigh-sheets", "hogget-05.csv").toString(),
            folder.toString()
        };
        assertEquals(
                "The cut tree: what was expected, and what came out: 29 parts weighed\n",
                printed(() -> CuttingTestReport.main(args)));
        assertTrue(Files.readString(folder.resolve("report.html")).contains("The sheet does not balance."));
        assertEquals(1360, ImageIO.read(folder.resolve("tree.png").toFile()).getWidth());
    }

    /**
     * Weights of the ten sheets added up outside the program: the leg's of those of all parts, times 99.5 % that drip and saw leave; its range
     * by the ratio estimator and t with 9 degrees of freedom, 2.262157 (any table of t), worked out there too.
     */
    @Test
    void ten_sheets_tell_the_shares_of_the_house_and_two_are_left_out() throws IOException {
        List<String> args = new ArrayList<>(List.of(Marram.file("hogget.cuts").toString()));
        try (Stream<Path> sheets = Files.list(Path.of("weigh-sheets"))) {
            sheets.map(Path::toString)
                    .filter(sheet -> sheet.endsWith(".csv"))
                    .sorted()
                    .forEach(args::add);
        }
        String said = printed(() -> HousesOwnShares.main(args.toArray(String[]::new)));
        assertTrue(
                said.contains("\nleg: 33.0 % stated, 33.01 % found, true mean 32.39 to 33.64 %\n"
                        + "loin: 11.0 % stated, 10.90 % found,"),
                said);
        assertEquals(
                2, said.lines().filter(line -> line.contains("is left out")).count());
    }

    @Test
    void what_moved_is_said_and_put_on_a_page(@TempDir Path folder) throws IOException {
        Path page = folder.resolve("moved.html");
        List<String> args = new ArrayList<>(List.of(Marram.file("hogget.cuts").toString(), page.toString()));
        try (Stream<Path> sheets = Files.list(Path.of("weigh-sheets"))) {
            sheets.map(Path::toString)
                    .filter(sheet -> sheet.endsWith(".csv"))
                    .sorted()
                    .forEach(args::add);
        }
        String said = printed(() -> WhatMoved.main(args.toArray(String[]::new)));
        assertTrue(said.endsWith("chance alone would make about 1.7 while nothing changes: no reason to act.\n"), said);
        assertTrue(Files.readString(page).contains("10 of 12 sheets"));
    }
}
