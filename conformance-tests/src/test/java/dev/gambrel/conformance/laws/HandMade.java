package dev.gambrel.conformance.laws;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.portion.Limit;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Trees and their parts made by hand; species, streams and sources are those of the house's hogget. */
final class HandMade {
    static final CutTree HOUSE =
            Specifications.compile(Specifications.house().get(0)).orElseThrow().tree();
    static final Home MINCE = to("mince");
    static final Part REST = new Part.Rest(MINCE);

    private HandMade() {}

    static CutTree carcass(Part... parts) {
        return tree(HOUSE.carcass(), HOUSE.streams(), HOUSE.sources(), parts);
    }

    static CutTree declaring(List<Stream> streams, List<Source> sources) {
        return tree(HOUSE.carcass(), streams, sources, cut("joint", "10"), REST);
    }

    static CutTree banded(String low, String high) {
        WeightBand band = new WeightBand.Stated(of(low, Unit.KILOGRAM), of(high, Unit.KILOGRAM));
        Carcass carcass = new Carcass(Basis.COLD, List.of(), band, List.of());
        return tree(carcass, HOUSE.streams(), HOUSE.sources(), cut("joint", "10"), REST);
    }

    /** With a step to the cold carcass from each of some earlier bases. */
    static CutTree stepped(Basis... from) {
        List<BasisStep> steps = Arrays.stream(from)
                .map(basis -> new BasisStep(basis, Basis.COLD, name("shrink"), percent("2")))
                .toList();
        Carcass carcass = new Carcass(Basis.COLD, List.of(), new WeightBand.NotStated(), steps);
        return tree(carcass, HOUSE.streams(), HOUSE.sources(), cut("joint", "10"), REST);
    }

    private static CutTree tree(Carcass carcass, List<Stream> streams, List<Source> sources, Part... parts) {
        return new CutTree(
                HOUSE.specification(), carcass, HOUSE.species(), streams, sources, List.of(parts), List.of());
    }

    /** With a species that has its first piece so many times. */
    static CutTree knowing(int pieces) {
        Species house = HOUSE.species();
        List<Piece> many = Collections.nCopies(pieces, house.pieces().get(0));
        Species much = new Species(house.name(), house.otherNames(), house.ribs(), house.vertebrae(), many);
        return new CutTree(
                HOUSE.specification(),
                HOUSE.carcass(),
                much,
                HOUSE.streams(),
                HOUSE.sources(),
                List.of(cut("joint", "10"), REST),
                List.of());
    }

    static <T> List<T> twice(List<T> list) {
        return java.util.stream.Stream.concat(list.stream(), list.stream()).toList();
    }

    static Part cut(String name, String percent, Part... parts) {
        return cut(name, share(percent), parts);
    }

    static Part cut(String name, Share share, Part... parts) {
        return cut(name, share, Description.NONE, new Home.Product(), List.of(), parts);
    }

    static Part cut(String name, Description description) {
        return cut(name, share("30"), description, new Home.Product(), List.of());
    }

    static Part cut(
            String name, Share share, Description description, Home home, List<Portion> portions, Part... parts) {
        return new Cut(name(name), PieceCount.NOT_STATED, share, description, List.of(parts), home, portions);
    }

    static Part single(String name) {
        return new Cut(
                name(name), PieceCount.ONE, share("30"), Description.NONE, List.of(), new Home.Product(), List.of());
    }

    static Part portioned(Home remainder, String grams, Part... parts) {
        Portion steak = Portion.byWeight(
                name("steak"),
                new Expected.Mean(of(grams, Unit.GRAM)),
                new Limit.Between(of("170", Unit.GRAM), of("190", Unit.GRAM)),
                remainder);
        return cut("joint", share("10"), Description.NONE, new Home.Product(), List.of(steak), parts);
    }

    static Part parted(SkeletonPoint first, SkeletonPoint second) {
        Separation where = new Separation(List.of("saw"), new Landmark.Between(first, second));
        return cut(
                "joint",
                new Description(BoneState.NOT_STATED, List.of(), List.of(where), List.of(), List.of(), List.of()));
    }

    static Part holding(String contents) {
        return cut(
                "joint",
                new Description(
                        BoneState.NOT_STATED, List.of(name(contents)), List.of(), List.of(), List.of(), List.of()));
    }

    static Description described(BoneState state) {
        return new Description(state, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    static Part bone(String name, String percent) {
        return bone(name, percent, "stock bones");
    }

    static Part bone(String name, String percent, String stream) {
        return new Part.Bone(name(name), List.of(name(name)), share(percent), to(stream));
    }

    static Part gland(String name) {
        return new Part.Trim(name("gland"), new TrimRule.GlandRemoval(name(name)), share("0.3"), to("bin"));
    }

    static Share alsoOf(String base, String percent) {
        return new Share.Stated(percent("10"), List.of(new Share.Derived(percent(percent), name(base))), List.of());
    }

    static Share share(String percent) {
        return new Share.Stated(percent(percent));
    }

    static Share spread(String percent, String deviation) {
        return new Share.Stated(new Expected.PlusMinus(of(percent, Unit.PERCENT), of(deviation, Unit.PERCENT)));
    }

    static Expected percent(String percent) {
        return new Expected.Mean(of(percent, Unit.PERCENT));
    }

    static Home to(String stream) {
        return new Home.ToStream(name(stream));
    }

    static TradeName name(String name) {
        return TradeName.of(name);
    }

    static Quantity of(String amount, Unit unit) {
        return Quantity.of(amount, unit);
    }
}
