package dev.gambrel.json;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import java.util.List;

/** Reads what leaves a cut. */
final class PartReader {
    private static final Reading<Part> PART = new Readings.Kinds<Part>()
            .or("cut", PartReader::cut)
            .or("way", PartReader::way)
            .or("bone", PartReader::bone)
            .or("trim", PartReader::trim)
            .or("loss", in -> new Part.Loss(DescriptionReader.name(in), FigureReader.share(in)))
            .or("rest", in -> new Part.Rest(home(in, "home")));

    private static final Reading<Bound.Kind> BOUND_KIND =
            Readings.word(List.of(Bound.Kind.values()), Bound.Kind::words);

    private static final Reading<Condition> CONDITION = new Readings.Kinds<Condition>()
            .or("piece weighs", in -> new Condition.PieceWeighs(bounds(in)))
            .or("carcass weighs", in -> new Condition.CarcassWeighs(bounds(in)))
            .or("grade is", in -> new Condition.GradeIs(grade(in), in.list("values", Readings::name)))
            .or(
                    "grade from",
                    in -> new Condition.GradeFrom(
                            grade(in),
                            in.need("first", "the first value", Readings::name),
                            in.need("last", "the last value", Readings::name)));

    private static final Reading<Choice> CHOICE = new Readings.Kinds<Choice>()
            .or("as a rule", in -> new Choice.AsARule())
            .or("share of pieces", in -> new Choice.OfPieces(FigureReader.quantity(in, "amount", Dimension.SHARE)))
            .or("when", in -> new Choice.When(in.need("condition", "what must be so", CONDITION)));

    private static final Reading<Home> HOME = new Readings.Kinds<Home>()
            .or("product", in -> new Home.Product())
            .or("stream", in -> new Home.ToStream(in.need("stream", "the name of a stream", Readings::name)));

    private static final Reading<TrimRule> RULE = new Readings.Kinds<TrimRule>()
            .or("fat cover", in -> new TrimRule.FatCover(in.list("limits", Readings.object(PartReader::fatLimit))))
            .or("removal", in -> new TrimRule.Removal(in.need("tissue", "what is taken off", Readings::name)))
            .or("gland removal", in -> new TrimRule.GlandRemoval(in.need("gland", "a gland by name", Readings::name)))
            .or("square off", in -> new TrimRule.SquareOff());

    private static final List<TrimRule.Where> WHERES = List.of(TrimRule.Where.values());
    private static final Reading<TrimRule.Where> WHERE = Readings.word(WHERES, TrimRule.Where::words);

    private PartReader() {}

    static Part part(Located value, Findings findings) {
        return PART.read(value, findings);
    }

    private static Cut cut(ObjectReader in) {
        return new Cut(
                DescriptionReader.name(in),
                FigureReader.pieces(in),
                FigureReader.share(in),
                in.optional("description", Description.NONE, Readings.object(DescriptionReader::description)),
                in.list("parts", PART),
                home(in, "home"),
                in.list("portions", Readings.object(PartReader::portion)));
    }

    private static Way way(ObjectReader in) {
        Cut work = new Cut(
                DescriptionReader.name(in),
                PieceCount.NOT_STATED,
                new Share.NotStated(),
                in.optional("description", Description.NONE, Readings.object(DescriptionReader::description)),
                in.list("parts", PART),
                home(in, "home"),
                in.list("portions", Readings.object(PartReader::portion)));
        return new Way(work, in.optional("choice", new Choice.OnRequest(), CHOICE));
    }

    private static TradeName grade(ObjectReader in) {
        return in.need("grade", "the name of a grade", Readings::name);
    }

    private static List<Bound> bounds(ObjectReader in) {
        return in.list("bounds", Readings.object(PartReader::bound));
    }

    private static Bound bound(ObjectReader in) {
        return new Bound(
                in.need("kind", "under, at most, over or at least", BOUND_KIND),
                FigureReader.quantity(in, "amount", Dimension.WEIGHT));
    }

    private static Part.Bone bone(ObjectReader in) {
        return new Part.Bone(
                DescriptionReader.name(in), in.list("bones", Readings::name), FigureReader.share(in), home(in, "home"));
    }

    private static Part.Trim trim(ObjectReader in) {
        return new Part.Trim(
                DescriptionReader.name(in),
                in.need("rule", "what is taken off", RULE),
                FigureReader.share(in),
                home(in, "home"));
    }

    private static Home home(ObjectReader in, String field) {
        return in.optional(field, new Home.NotStated(), HOME);
    }

    private static Portion portion(ObjectReader in) {
        return new Portion(
                DescriptionReader.name(in),
                in.need("target", "the weight aimed at", FigureReader.expected(Dimension.WEIGHT)),
                in.optional("range", new Portion.Range.NotStated(), Readings.object(FigureReader::range)),
                home(in, "remainder"));
    }

    private static TrimRule.FatLimit fatLimit(ObjectReader in) {
        return new TrimRule.FatLimit(
                FigureReader.quantity(in, "atMost", Dimension.LENGTH),
                in.need(
                        "where",
                        "how the cover is judged: "
                                + Shown.list(WHERES.stream()
                                        .map(TrimRule.Where::words)
                                        .toList()),
                        WHERE));
    }
}
