package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.name;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.portioned;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.to;
import static dev.gambrel.yields.Sheet.trim;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.working.Order;
import dev.gambrel.yields.working.Working;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds of a cut that is worked in ways, whatever the mix. */
class WorkingLaws {
    private static final double NOTHING = 22e-12;
    private static final TreePath TOPSIDE = new TreePath(List.of(name("topside")));

    private static Way way(Choice choice, Home home, Cut cut) {
        Cut work = new Cut(
                cut.name(),
                PieceCount.NOT_STATED,
                new Share.NotStated(),
                cut.description(),
                cut.parts(),
                home,
                cut.portions());
        return new Way(work, choice);
    }

    private static final Way STEAKS = way(
            new Choice.AsARule(),
            new Home.Product(),
            portioned(cut("steaks", "", trim("silverskin", "1.5 ± 0.4", "waste")), "steak", "0.180", to("diced")));

    private static final Way WHOLE =
            way(new Choice.OnRequest(), new Home.Product(), cut("whole", "", trim("fat", "3 ± 1", "mince")));

    private static final Way DIVIDED = way(
            new Choice.OnRequest(),
            new Home.Product(),
            cut("divided", "", cut("cap", "30 ± 2"), trim("fat", "4 ± 1", "waste"), rest("diced")));

    private static CutTree sheet(Way... ways) {
        return hogget(pair("leg", "33 ± 0.9", cut("topside", "21 ± 0.9", ways), rest("mince")), rest("mince"));
    }

    private static final CutTree TREE = sheet(STEAKS, WHOLE, DIVIDED);

    private static ExpectedYields worked(CutTree tree, Working working) {
        return Yields.of(tree, working)
                .forCarcass(Sheet.kilograms("22", Basis.COLD))
                .orElseThrow();
    }

    private static ExpectedYields all(String way) {
        return worked(TREE, Working.AS_WRITTEN.ordering(Order.all(TOPSIDE, name(way))));
    }

    private static ExpectedYields mix(int steaks, int whole, int divided) {
        return worked(
                TREE,
                Working.AS_WRITTEN.ordering(new Order(
                        TOPSIDE, List.of(share("steaks", steaks), share("whole", whole), share("divided", divided)))));
    }

    private static Order.WayShare share(String way, int percent) {
        return new Order.WayShare(name(way), Quantity.of(Integer.toString(percent), Unit.PERCENT));
    }

    private static double lost(ExpectedYields yields) {
        return Arrays.stream(Outcome.values())
                .mapToDouble(outcome -> yields.total(outcome).mean())
                .sum();
    }

    @Property(tries = 200)
    void every_mix_gives_what_was_weighed(
            @ForAll @IntRange(max = 50) int steaks, @ForAll @IntRange(max = 50) int whole) {
        assertEquals(22, lost(mix(steaks, whole, 100 - steaks - whole)), NOTHING);
    }

    @Property(tries = 200)
    void what_comes_of_a_mix_is_the_mix_of_what_comes_of_each(
            @ForAll @IntRange(max = 50) int steaks, @ForAll @IntRange(max = 50) int whole) {
        ExpectedYields mixed = mix(steaks, whole, 100 - steaks - whole);
        for (ToDoubleFunction<ExpectedYields> figure : FIGURES) {
            double each = steaks * figure.applyAsDouble(all("steaks"))
                    + whole * figure.applyAsDouble(all("whole"))
                    + (100 - steaks - whole) * figure.applyAsDouble(all("divided"));
            assertEquals(each / 100, figure.applyAsDouble(mixed), NOTHING);
        }
    }

    private static final List<ToDoubleFunction<ExpectedYields>> FIGURES = List.of(
            yields -> yields.products().mean(),
            yields -> yields.streams().get(0).weight().mean(),
            yields -> yields.streams().get(1).weight().mean(),
            yields -> yields.streams().get(3).weight().mean(),
            yields -> yields.portions().stream()
                    .mapToDouble(piece ->
                            PortionYield.of(piece).expectedNumberFromAll().orElseThrow())
                    .sum());

    @Example
    void all_of_one_way_is_that_way() {
        ExpectedYields mixed = mix(0, 100, 0);
        ExpectedYields chosen = all("whole");
        assertEquals(chosen.rows().size(), mixed.rows().size());
        for (int i = 0; i < chosen.rows().size(); i++) {
            assertEquals(chosen.rows().get(i).allPieces(), mixed.rows().get(i).allPieces());
            assertEquals(chosen.rows().get(i).pieces(), mixed.rows().get(i).pieces());
            assertEquals(chosen.rows().get(i).path(), mixed.rows().get(i).path());
        }
    }

    @Example
    void a_way_that_takes_all_leaves_the_spread_as_it_was() {
        ExpectedYields chosen = all("whole");
        assertEquals(
                Sheet.sd(Sheet.row(chosen, "topside").allPieces().orElseThrow()),
                Sheet.sd(Sheet.row(chosen, "whole").allPieces().orElseThrow()),
                1e-12);
    }

    @Example
    void one_piece_of_a_mix_weighs_as_one_piece_of_the_cut() {
        ExpectedYields mixed = mix(30, 30, 40);
        double piece = Sheet.row(mixed, "topside").onePiece().orElseThrow().mean();
        assertEquals(piece, Sheet.row(mixed, "steaks").onePiece().orElseThrow().mean(), 1e-12);
        assertEquals(0.6, Sheet.row(mixed, "whole").pieces(), 1e-12);
    }

    @Example
    void without_an_order_the_rule_holds() {
        assertEquals(
                all("steaks").products().mean(),
                worked(TREE, Working.AS_WRITTEN).products().mean());
        assertEquals("as a rule", worked(TREE, Working.AS_WRITTEN).ways().get(0).because());
    }

    /** Weights of legs and topsides drawn as normal shares; each piece goes by its own weight. */
    @Property(tries = 4)
    void a_split_by_weight_agrees_with_draws(@ForAll @IntRange(min = 70, max = 82) int hundredths) {
        Quantity limit = Quantity.of("0." + hundredths, Unit.KILOGRAM);
        Choice.When light = new Choice.When(new Condition.PieceWeighs(List.of(new Bound(Bound.Kind.UNDER, limit))));
        CutTree tree = sheet(STEAKS, way(light, to("diced"), cut("dice", "")));
        double exact =
                worked(tree, Working.AS_WRITTEN).streams().get(0).weight().mean();
        int draws = 400_000;
        Random random = new Random(20_260_101);
        double sum = 0;
        for (int i = 0; i < draws; i++) {
            double pieces = 22 * (0.33 + 0.009 * random.nextGaussian()) * (0.21 + 0.009 * random.nextGaussian());
            sum += pieces / 2 < limit.value() ? pieces : 0;
        }
        double fourErrors = 4 * 0.8 / Math.sqrt(draws);
        double notQuiteNormal = 0.003;
        assertEquals(sum / draws, exact, fourErrors + notQuiteNormal);
    }

    @Example
    void the_carcass_is_weighed_as_the_specification_weighs_it() {
        Choice.When heavy = new Choice.When(new Condition.CarcassWeighs(
                List.of(new Bound(Bound.Kind.AT_LEAST, Quantity.of("22.0", Unit.KILOGRAM)))));
        CutTree tree = hogget(
                List.of(Sheet.chill("2.0")),
                pair("leg", "33 ± 0.9", STEAKS, way(heavy, to("diced"), cut("dice", ""))),
                rest("mince"));
        Yields yields = Yields.of(tree);
        assertEquals("as a rule", because(yields, "22.44"));
        assertEquals("when the carcass is at least 22.0 kg", because(yields, "22.45"));
    }

    private static String because(Yields yields, String warm) {
        return yields.forCarcass(Sheet.kilograms(warm, Basis.WARM))
                .orElseThrow()
                .ways()
                .get(0)
                .because();
    }
}
