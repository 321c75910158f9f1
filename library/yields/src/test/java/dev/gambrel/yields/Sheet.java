package dev.gambrel.yields;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.List;

/** Cutting sheets for tests, written short: shares as "33.0", "33.0 ± 0.9", "31.2 to 34.8" or "" for not stated. */
public final class Sheet {
    public static final List<Stream> STREAMS = List.of(
            new Stream(name("diced"), Stream.Kind.SALEABLE, new Stream.Lean.Stated(percent("95"), Judged.VISUAL)),
            new Stream(name("mince"), Stream.Kind.SALEABLE, new Stream.Lean.NotStated()),
            new Stream(name("bones"), Stream.Kind.BY_PRODUCT, new Stream.Lean.NotStated()),
            new Stream(name("waste"), Stream.Kind.WASTE, new Stream.Lean.NotStated()));

    private static final WeightBand HOGGET =
            new WeightBand.Stated(Quantity.of("20", Unit.KILOGRAM), Quantity.of("24", Unit.KILOGRAM));

    private Sheet() {}

    public static CutTree hogget(Part... parts) {
        return tree(new Carcass(Basis.COLD, List.of(), HOGGET, List.of()), parts);
    }

    static CutTree hogget(List<BasisStep> steps, Part... parts) {
        return tree(new Carcass(Basis.COLD, List.of(), HOGGET, steps), parts);
    }

    public static CutTree tree(Carcass carcass, Part... parts) {
        return new CutTree(
                new Specification("Marram hogget", 3),
                carcass,
                Species.unknown(name("sheep")),
                STREAMS,
                List.of(),
                List.of(parts),
                List.of());
    }

    public static Carcass cold(WeightBand band) {
        return new Carcass(Basis.COLD, List.of(), band, List.of());
    }

    public static BasisStep chill(String share) {
        return new BasisStep(Basis.WARM, Basis.COLD, name("chill shrink"), expected(share));
    }

    public static Cut cut(String name, String share, Part... parts) {
        return cut(name, PieceCount.NOT_STATED, share, parts);
    }

    public static Cut pair(String name, String share, Part... parts) {
        return cut(name, PieceCount.TWO, share, parts);
    }

    private static Cut cut(String name, PieceCount pieces, String share, Part... parts) {
        return new Cut(
                name(name), pieces, share(share), Description.NONE, List.of(parts), new Home.Product(), List.of());
    }

    public static Cut portioned(Cut cut, String portion, String target, Home remainder) {
        Portion one = Portion.byWeight(
                name(portion), new Expected.Mean(Quantity.of(target, Unit.KILOGRAM)), new Limit.NotStated(), remainder);
        return new Cut(cut.name(), cut.pieces(), cut.share(), cut.description(), cut.parts(), cut.home(), List.of(one));
    }

    public static Part bone(String name, String share, String stream) {
        return new Part.Bone(name(name), List.of(name(name)), share(share), to(stream));
    }

    public static Part trim(String name, String share, String stream) {
        return new Part.Trim(name(name), new TrimRule.Removal(name(name)), share(share), to(stream));
    }

    public static Part loss(String name, String share) {
        return new Part.Loss(name(name), share(share));
    }

    public static Part rest(String stream) {
        return new Part.Rest(to(stream));
    }

    public static Home to(String stream) {
        return new Home.ToStream(name(stream));
    }

    public static TradeName name(String text) {
        return TradeName.of(text);
    }

    public static Share share(String text) {
        return text.isEmpty() ? new Share.NotStated() : new Share.Stated(expected(text));
    }

    public static Expected expected(String text) {
        if (text.contains("±")) {
            String[] both = text.split(" ± ");
            return new Expected.PlusMinus(percent(both[0]), percent(both[1]));
        }
        if (text.contains("to")) {
            String[] both = text.split(" to ");
            return new Expected.CentralRange(percent(both[0]), percent(both[1]));
        }
        return new Expected.Mean(percent(text));
    }

    private static Quantity percent(String amount) {
        return Quantity.of(amount, Unit.PERCENT);
    }

    public static CarcassWeight kilograms(String amount, Basis basis) {
        return new CarcassWeight(Quantity.of(amount, Unit.KILOGRAM), basis);
    }

    public static ExpectedYields yields(CutTree tree, String coldKilograms) {
        return Yields.of(tree).forCarcass(kilograms(coldKilograms, Basis.COLD)).orElseThrow();
    }

    public static YieldRow row(ExpectedYields yields, String name) {
        return yields.rows().stream()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    public static double sd(Estimate estimate) {
        return ((Spread.Stated) estimate.spread()).standardDeviation();
    }

    /** House deer specification "D", the worked scenes 1 and 3 of the design: invented, in the proportions of the trade. */
    public static CutTree deer() {
        Part haunch = pair(
                "haunch",
                "39.5",
                cut("rump", "9.0"),
                bone("shank", "11.0", "bones"),
                bone("aitch bone", "6.5", "bones"),
                bone("femur", "7.0", "bones"),
                bone("patella", "0.4", "bones"),
                cut("thick flank", "13.5"),
                cut("topside", "20.0"),
                cut("silverside flat", "14.0"),
                cut("salmon cut", "5.6"),
                cut("heel", "4.0"),
                trim("silverskin, fat and glands", "3.5", "waste"),
                loss("drip", "0.5"),
                rest("mince"));
        return tree(
                cold(new WeightBand.NotStated()),
                cut("neck", "12.0"),
                cut("flank", "15.0"),
                pair("shoulder", "18.0"),
                cut("saddle", "15.5"),
                haunch);
    }
}
