package dev.gambrel.tree;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.portion.Limit;
import java.util.ArrayList;
import java.util.List;

/**
 * Cutting sheets for tests, written short: shares as "33.0", "33.0 ± 0.9", "31.2 to 34.8" or "" for not stated. Each
 * method gives a new sheet.
 */
public record Sheet(Carcass carcass, Species species, List<Stream> streams, List<Source> sources, List<Part> parts) {
    private static final WeightBand BAND =
            new WeightBand.Stated(Quantity.of("20", Unit.KILOGRAM), Quantity.of("24", Unit.KILOGRAM));
    private static final Carcass COLD = new Carcass(Basis.COLD, List.of(), BAND, List.of());
    private static final List<Stream> STREAMS = List.of(
            new Stream(name("diced"), Stream.Kind.SALEABLE, new Stream.Lean.NotStated()),
            new Stream(name("mince"), Stream.Kind.SALEABLE, new Stream.Lean.NotStated()),
            new Stream(name("bones"), Stream.Kind.BY_PRODUCT, new Stream.Lean.NotStated()),
            new Stream(name("waste"), Stream.Kind.WASTE, new Stream.Lean.NotStated()));

    /** A hogget of which nothing but the name is known. */
    public static Sheet of(Part... parts) {
        return new Sheet(COLD, Species.unknown(name("sheep")), STREAMS, List.of(), List.of(parts));
    }

    public Sheet of(Species other) {
        return new Sheet(carcass, other, streams, sources, parts);
    }

    public Sheet with(Carcass other) {
        return new Sheet(other, species, streams, sources, parts);
    }

    public Sheet with(Stream stream) {
        return new Sheet(carcass, species, plus(streams, stream), sources, parts);
    }

    public Sheet citing(String source, Source.Kind kind) {
        Source more = new Source(name(source), kind, source + ", page 6");
        return new Sheet(carcass, species, streams, plus(sources, more), parts);
    }

    private static <T> List<T> plus(List<T> list, T item) {
        List<T> longer = new ArrayList<>(list);
        longer.add(item);
        return longer;
    }

    public CutTree tree() {
        return new CutTree(new Specification("Marram hogget", 3), carcass, species, streams, sources, parts, List.of());
    }

    /** A cut of which a carcass has two, as of most. */
    public static Cut cut(String name, String share, Part... parts) {
        return new Cut(
                name(name),
                PieceCount.TWO,
                share(share),
                Description.NONE,
                List.of(parts),
                new Home.Product(),
                List.of());
    }

    public static Cut counted(PieceCount count, Cut cut) {
        return new Cut(cut.name(), count, cut.share(), cut.description(), cut.parts(), cut.home(), cut.portions());
    }

    public static Cut sent(Cut cut, String stream) {
        return new Cut(
                cut.name(), cut.pieces(), cut.share(), cut.description(), cut.parts(), to(stream), cut.portions());
    }

    public static Cut cited(Cut cut, String... sources) {
        Share.Stated share = (Share.Stated) cut.share();
        return shared(cut, new Share.Stated(share.expected(), share.others(), names(sources)));
    }

    /** The same cut, its share written of something else as well. */
    public static Cut also(Cut cut, String share, String of) {
        Share.Stated first = (Share.Stated) cut.share();
        List<Share.Derived> others = plus(first.others(), new Share.Derived(expected(share), name(of)));
        return shared(cut, new Share.Stated(first.expected(), others, first.sources()));
    }

    private static Cut shared(Cut cut, Share share) {
        return new Cut(cut.name(), cut.pieces(), share, cut.description(), cut.parts(), cut.home(), cut.portions());
    }

    public static Cut portioned(Cut cut, Portion... portions) {
        return new Cut(
                cut.name(), cut.pieces(), cut.share(), cut.description(), cut.parts(), cut.home(), List.of(portions));
    }

    public static Cut boneless(Cut cut) {
        return described(cut, BoneState.BONELESS, List.of(), List.of());
    }

    public static Cut boneIn(Cut cut) {
        return described(cut, BoneState.BONE_IN, List.of(), List.of());
    }

    public static Cut containing(Cut cut, String... contents) {
        return described(cut, cut.description().boneState(), names(contents), List.of());
    }

    public static Cut parted(Cut cut, Landmark landmark) {
        return described(cut, BoneState.NOT_STATED, List.of(), List.of(new Separation(List.of("knife"), landmark)));
    }

    private static Cut described(Cut cut, BoneState state, List<TradeName> contents, List<Separation> separations) {
        Description words = new Description(state, contents, separations, List.of(), List.of(), List.of());
        return new Cut(cut.name(), cut.pieces(), cut.share(), words, cut.parts(), cut.home(), cut.portions());
    }

    /** One or more bones, joined by "and". */
    public static Part bone(String name, String share) {
        return new Part.Bone(name(name), names(name.split(" and ")), share(share), to("bones"));
    }

    public static Part trim(String name, String share) {
        return new Part.Trim(name(name), new TrimRule.Removal(name(name)), share(share), to("waste"));
    }

    public static Part gland(String name) {
        return new Part.Trim(name(name), new TrimRule.GlandRemoval(name(name)), share("0.3"), to("waste"));
    }

    public static Part loss(String name, String share) {
        return new Part.Loss(name(name), share(share));
    }

    public static Part rest(String stream) {
        return new Part.Rest(to(stream));
    }

    /** A portion by weight in grams, accepted from one weight to another, its remainder diced. */
    public static Portion portion(String grams, String low, String high) {
        Limit range = new Limit.Between(Quantity.of(low, Unit.GRAM), Quantity.of(high, Unit.GRAM));
        return Portion.byWeight(name("steak"), new Expected.Mean(Quantity.of(grams, Unit.GRAM)), range, to("diced"));
    }

    public static Home to(String stream) {
        return new Home.ToStream(name(stream));
    }

    public static TradeName name(String text) {
        return TradeName.of(text);
    }

    private static List<TradeName> names(String... names) {
        return List.of(names).stream().map(TradeName::of).toList();
    }

    public static Share share(String text) {
        return text.isEmpty() ? new Share.NotStated() : new Share.Stated(expected(text));
    }

    public static Expected expected(String text) {
        if (text.contains(" ± ")) {
            String[] both = text.split(" ± ");
            return new Expected.PlusMinus(percent(both[0]), percent(both[1]));
        }
        if (text.contains(" to ")) {
            String[] both = text.split(" to ");
            return new Expected.CentralRange(percent(both[0]), percent(both[1]));
        }
        return new Expected.Mean(percent(text));
    }

    private static Quantity percent(String amount) {
        return Quantity.of(amount, Unit.PERCENT);
    }
}
