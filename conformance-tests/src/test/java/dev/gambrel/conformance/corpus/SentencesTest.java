package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.format.SpecFormatter;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.bench.Treatment;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Precedence;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.StreamYield;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.table.YieldTable;
import dev.gambrel.yields.working.Order;
import dev.gambrel.yields.working.Working;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Fourteen sentences that are hard to write down: each is said by a whole specification, and means what it says. */
class SentencesTest {
    private static final int DECIMALS = 3;
    private static final double CLOSE = 1e-9;
    private static final String SECOND_FILE = "main.cuts";
    private static final Path FOLDER = Corpus.folder("sentences");

    static List<Path> sentences() {
        return Corpus.in(FOLDER, entry -> !entry.toString().endsWith(".expected")).stream()
                .map(entry -> Files.isDirectory(entry) ? entry.resolve(SECOND_FILE) : entry)
                .toList();
    }

    static Stream<Path> files() {
        return sentences().stream()
                .flatMap(sentence -> sentence.endsWith(SECOND_FILE)
                        ? Corpus.in(
                                sentence.getParent(), file -> file.toString().endsWith(".cuts"))
                                .stream()
                        : Stream.of(sentence));
    }

    @Test
    void every_one_of_the_fourteen_is_there() {
        List<String> numbers = sentences().stream()
                .map(sentence -> FOLDER.relativize(sentence).toString().substring(0, 3))
                .toList();
        assertEquals(IntStream.rangeClosed(1, 14).mapToObj("%02d-"::formatted).toList(), numbers);
    }

    @ParameterizedTest
    @MethodSource("sentences")
    void without_a_finding_a_sentence_gives_the_expected_table(Path sentence) {
        ExpectedYields yields = yields(tree(sentence), Working.AS_WRITTEN);
        Corpus.hold(YieldTable.of(yields, Unit.KILOGRAM, DECIMALS).text(), Corpus.twin(sentence));
    }

    @ParameterizedTest
    @MethodSource("files")
    void it_is_laid_out_below_the_sentence_in_words(Path file) {
        String text = Corpus.read(file);
        assertTrue(text.startsWith("// "), "the sentence in words");
        var source = new SourceText(file.getFileName().toString(), text);
        assertEquals(new SpecFormatter().format(source).orElseThrow(), text);
    }

    @Test
    void one_a_rack_has_six_to_eight_ribs() {
        assertEquals(
                new AnatomicalCount(6, 8),
                cut(1, "best end").description().bench().ribs());
    }

    @Test
    void two_the_tail_is_25_mm_at_one_end_and_40_at_the_other() {
        Landmark.AtDistance edge = (Landmark.AtDistance)
                cut(2, "loin").description().separations().get(0).landmark();
        assertEquals(
                List.of(
                        new Landmark.End(millimetres("25"), false, called("the eye"), "the rib end"),
                        new Landmark.End(millimetres("40"), false, called("the eye"), "the chump end")),
                edge.ends());
    }

    @Test
    void three_weight_rules_over_a_thickness_that_is_stated_too() {
        Portion steak = cut(3, "leg / topside").portions().get(0);
        assertEquals(Precedence.WEIGHT, steak.acceptance().precedence());
        assertEquals(
                new Limit.Between(millimetres("18"), millimetres("22")),
                steak.acceptance().thickness());
    }

    @Test
    void four_a_pair_is_matched_within_50_g() {
        assertEquals(
                new Matching.Within(Quantity.of("50", Unit.GRAM)),
                cut(4, "best end").description().bench().matching());
    }

    @Test
    void five_a_side_gives_at_least_seven_chops() {
        Portion chop = cut(5, "loin").portions().get(0);
        assertEquals(new Fewest.From(7, Fewest.Whole.SIDE), chop.acceptance().fewest());
    }

    @Test
    void six_a_piece_under_one_kilogram_is_diced_and_another_cut_into_steaks() {
        Condition small =
                new Condition.PieceWeighs(List.of(new Bound(Bound.Kind.UNDER, Quantity.of("1.0", Unit.KILOGRAM))));
        assertEquals(new Choice.When(small), way(6, "leg / silverside / dice").choice());
        assertEquals(to("diced"), way(6, "leg / silverside / dice").home());
        assertEquals(new Choice.AsARule(), way(6, "leg / silverside / steaks").choice());
        assertTrue(way(6, "leg / silverside / steaks").work().portions().get(0).aim() instanceof Aim.Weight);
    }

    @Test
    void seven_mince_is_of_shin_and_neck_only() {
        assertEquals(
                List.of(called("shin"), called("neck")),
                tree(7).stream(called("mince")).orElseThrow().onlyFrom());
    }

    @Test
    void eight_the_topside_is_that_of_the_scheme_but_for_its_cap() {
        assertEquals(
                List.of(new Reference(called("UNECE"), "2010", "2015", "cap off", List.of())),
                cut(8, "topside").description().references());
    }

    /** How much is ordered is not known to a specification, so a run says it. */
    @Test
    void nine_trimmings_are_minced_until_the_order_is_full_and_then_go_to_sausage() {
        Condition full = new Condition.GradeIs(called("mince order"), List.of(called("full")));
        assertEquals(new Choice.AsARule(), way(9, "trimmings / mince").choice());
        assertEquals(new Choice.When(full), way(9, "trimmings / sausage").choice());
        assertEquals(to("mince"), way(9, "trimmings / mince").home());
        assertEquals(to("sausage"), way(9, "trimmings / sausage").home());
    }

    /** 18 % of 22 kg are 3.96 kg; a quarter of them is 0.99 kg. */
    @Test
    void nine_a_carcass_at_which_the_order_fills_up_is_shared_between_the_two() {
        Order quarter = new Order(
                path("trimmings"),
                List.of(
                        new Order.WayShare(called("mince"), percent("75").value()),
                        new Order.WayShare(called("sausage"), percent("25").value())));
        ExpectedYields yields = yields(tree(9), Working.AS_WRITTEN.ordering(quarter));
        assertEquals(2.97, kilograms(yields, "mince"), CLOSE);
        assertEquals(0.99, kilograms(yields, "sausage"), CLOSE);
    }

    @Test
    void ten_revision_4_has_fat_of_3_mm_where_revision_3_has_5_and_nothing_else_changes() {
        Path revision = sentences().get(9);
        CutTree three = tree(revision.resolveSibling("revision-3.cuts"));
        CutTree four = tree(revision);
        assertEquals(3, three.specification().revision());
        assertEquals(4, four.specification().revision());
        assertEquals(millimetres("5"), fat(three).atMost());
        assertEquals(millimetres("3"), fat(four).atMost());
        String limit = fat(three).toString();
        assertEquals(
                three.parts().toString().replace(limit, fat(four).toString()),
                four.parts().toString());
    }

    @Test
    void eleven_the_heel_stays_on_in_winter() {
        assertEquals(
                new Choice.When(new Condition.GradeIs(called("season"), List.of(called("winter")))),
                way(11, "leg / silverside / heel on").choice());
        ExpectedYields winter = yields(tree(11), Working.AS_WRITTEN.given(called("season"), called("winter")));
        ExpectedYields summer = yields(tree(11), Working.AS_WRITTEN.given(called("season"), called("summer")));
        TreePath heel = path("leg / silverside / heel off / heel");
        assertTrue(winter.row(heel).isEmpty(), "on in winter");
        assertTrue(summer.row(heel).isPresent(), "off in summer");
    }

    @Test
    void twelve_half_of_the_topsides_are_steaks_and_half_stay_whole() {
        Choice half = new Choice.OfPieces(percent("50").value());
        assertEquals(half, way(12, "leg / topside / steaks").choice());
        assertEquals(half, way(12, "leg / topside / whole joint").choice());
    }

    @Test
    void thirteen_a_carcass_loses_2_per_cent_and_then_three_tenths_a_day_of_what_is_left() {
        BasisStep chill = tree(13).carcass().steps().get(0);
        assertEquals(percent("2"), chill.share());
        assertEquals(new BasisStep.Hanging.Daily(percent("0.3"), 7), chill.hanging());
        ExpectedYields yields = yields(tree(13), Working.AS_WRITTEN);
        assertEquals(
                22 * 0.98 * Math.pow(0.997, 7),
                yields.carcass().allPieces().orElseThrow().mean(),
                CLOSE);
    }

    @Test
    void fourteen_silverskin_is_left_on_for_dice_and_comes_off_a_joint() {
        List<Treatment> dice =
                way(14, "leg / thick flank / dice").work().description().bench().treatments();
        assertEquals(called("silverskin"), dice.get(0).tissue());
        assertEquals(Treatment.Kind.LEFT, dice.get(0).kind());
        Part.Trim trim =
                (Part.Trim) way(14, "leg / thick flank / joint").work().parts().get(0);
        assertEquals(new TrimRule.Removal(called("silverskin")), trim.rule());
    }

    private static CutTree tree(int number) {
        return tree(sentences().get(number - 1));
    }

    private static CutTree tree(Path file) {
        var result = new SpecCompiler().compile(file);
        assertEquals("", Corpus.report(result.diagnostics()));
        return result.orElseThrow().tree();
    }

    /** Of a carcass in the middle of the band; where there are steps between weighings, of 22 kg before the first of them. */
    private static ExpectedYields yields(CutTree tree, Working working) {
        Yields yields = Yields.of(tree, working);
        var result = tree.carcass().steps().stream()
                .findFirst()
                .map(step -> yields.forCarcass(new CarcassWeight(Quantity.of("22", Unit.KILOGRAM), step.from())))
                .orElseGet(yields::forTypicalCarcass);
        assertEquals("", Corpus.report(result.diagnostics()));
        return result.orElseThrow();
    }

    private static double kilograms(ExpectedYields yields, String stream) {
        return yields.streams().stream()
                .filter(one -> one.stream().name().equals(called(stream)))
                .map(StreamYield::weight)
                .findFirst()
                .orElseThrow()
                .mean();
    }

    private static TrimRule.FatLimit fat(CutTree tree) {
        Cut topside = (Cut) part(tree, "leg / topside");
        return ((TrimRule.FatCover) ((Part.Trim) topside.parts().get(0)).rule())
                .limits()
                .get(0);
    }

    private static Cut cut(int number, String path) {
        return (Cut) part(tree(number), path);
    }

    private static Way way(int number, String path) {
        return (Way) part(tree(number), path);
    }

    private static Part part(CutTree tree, String path) {
        return part(tree.parts(), path(path).names());
    }

    private static Part part(List<Part> parts, List<TradeName> names) {
        Part first = parts.stream()
                .filter(part -> part.name().equals(names.get(0)))
                .findFirst()
                .orElseThrow();
        return names.size() == 1 ? first : part(((Cut) first).parts(), names.subList(1, names.size()));
    }

    private static TreePath path(String text) {
        return new TreePath(Arrays.stream(text.split(" / ")).map(TradeName::of).toList());
    }

    private static Home to(String stream) {
        return new Home.ToStream(called(stream));
    }

    private static TradeName called(String text) {
        return TradeName.of(text);
    }

    private static Quantity millimetres(String text) {
        return Quantity.of(text, Unit.MILLIMETRE);
    }

    private static Expected.Mean percent(String text) {
        return new Expected.Mean(Quantity.of(text, Unit.PERCENT));
    }
}
