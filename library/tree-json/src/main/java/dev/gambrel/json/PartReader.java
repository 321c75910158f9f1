package dev.gambrel.json;

import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.ObjectReader;
import dev.gambrel.json.located.Reading;
import dev.gambrel.json.located.Readings;
import dev.gambrel.json.located.Shown;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Precedence;
import dev.gambrel.tree.portion.Slicing;
import java.util.List;
import java.util.function.Function;

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
            .or(
                    "stream",
                    in -> new Home.ToStream(
                            in.need("stream", "the name of a stream", Readings::name),
                            in.optional("lean", SourceLean.NOT_STATED, Readings.object(TreeReader::sourceLean))));

    private static final Reading<TrimRule> RULE = new Readings.Kinds<TrimRule>()
            .or(
                    "fat cover",
                    in -> new TrimRule.FatCover(
                            in.list("limits", Readings.object(PartReader::fatLimit)), fatFinish(in)))
            .or("removal", in -> new TrimRule.Removal(in.need("tissue", "what is taken off", Readings::name)))
            .or("gland removal", in -> new TrimRule.GlandRemoval(in.need("gland", "a gland by name", Readings::name)))
            .or("square off", in -> new TrimRule.SquareOff());

    private static final List<TrimRule.Where> WHERES = List.of(TrimRule.Where.values());
    private static final Reading<TrimRule.Where> WHERE = Readings.word(WHERES, TrimRule.Where::words);

    private static final Reading<Precedence> PRECEDENCE =
            Readings.word(List.of(Precedence.WEIGHT, Precedence.THICKNESS), Precedence::words);

    private static final Reading<Fewest.Whole> WHOLE =
            Readings.word(List.of(Fewest.Whole.values()), Fewest.Whole::words);

    private static final Reading<Slicing.Length> LENGTH =
            Readings.object(in -> new Slicing.Length.Stated(FigureReader.expected(in, Dimension.LENGTH)));

    private static final Reading<Finish.Binding> BINDING = new Readings.Kinds<Finish.Binding>()
            .or("tied", in -> new Finish.Binding.Tied(in.need("times", "a whole number", Readings::count)))
            .or("tied every", in -> new Finish.Binding.TiedEvery(length(in, "spacing")))
            .or("netted", in -> new Finish.Binding.Netted(length(in, "size")));

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
                DescriptionReader.name(in),
                in.list("bones", Readings::name),
                FigureReader.share(in),
                home(in, "home"),
                in.list("after", Readings::name));
    }

    private static Part.Trim trim(ObjectReader in) {
        return new Part.Trim(
                DescriptionReader.name(in),
                in.need("rule", "what is taken off", RULE),
                FigureReader.share(in),
                home(in, "home"),
                in.list("after", Readings::name));
    }

    private static Home home(ObjectReader in, String field) {
        return in.optional(field, new Home.NotStated(), HOME);
    }

    private static Portion portion(ObjectReader in) {
        return new Portion(
                DescriptionReader.name(in),
                aim(in),
                acceptance(in),
                slicing(in),
                finish(in),
                in.optional("endPieces", new Portion.EndPieces.NotStated(), Readings.object(PartReader::endPieces)),
                home(in, "remainder"));
    }

    /** A number stands alone; otherwise there is a weight, a thickness, both, or nothing. */
    private static Aim aim(ObjectReader in) {
        if (in.has("number")) {
            return new Aim.Number(in.need("number", "a whole number", Readings::count));
        }
        if (!in.has("thickness")) {
            return in.has("target") ? new Aim.Weight(weight(in)) : new Aim.Open();
        }
        Expected thickness = in.need("thickness", "a length", FigureReader.expected(Dimension.LENGTH));
        return in.has("target") ? new Aim.WeightAndThickness(weight(in), thickness) : new Aim.Thickness(thickness);
    }

    private static Expected weight(ObjectReader in) {
        return in.need("target", "the weight aimed at", FigureReader.expected(Dimension.WEIGHT));
    }

    private static Acceptance acceptance(ObjectReader in) {
        return new Acceptance(
                FigureReader.limit(in, "range", Dimension.WEIGHT),
                FigureReader.limit(in, "thicknessRange", Dimension.LENGTH),
                in.optional("rules", Precedence.NOT_STATED, PRECEDENCE),
                FigureReader.measure(in, "smallest", Dimension.WEIGHT),
                in.optional("fewest", new Fewest.NotStated(), Readings.object(PartReader::fewest)),
                TermReader.outside(in));
    }

    private static Fewest fewest(ObjectReader in) {
        return new Fewest.From(
                in.need("number", "a whole number", Readings::count),
                in.need("from", "what they are counted from", WHOLE));
    }

    private static Slicing slicing(ObjectReader in) {
        return new Slicing(
                FigureReader.measure(in, "kerf", Dimension.LENGTH),
                in.optional("length", new Slicing.Length.NotStated(), LENGTH),
                in.optional("direction", "", Readings::text));
    }

    private static Finish finish(ObjectReader in) {
        return new Finish(
                in.optional("binding", new Finish.Binding.NotStated(), BINDING),
                in.optional("pack", new Finish.Pack.NotStated(), Readings.object(PartReader::pack)),
                in.list("tares", Readings.object(PartReader::tare)));
    }

    private static Finish.Pack pack(ObjectReader in) {
        return new Finish.Pack.Together(
                in.need("number", "a whole number", Readings::count),
                in.need("container", "what they are packed in", Readings::name));
    }

    private static Finish.Tare tare(ObjectReader in) {
        Quantity weight = FigureReader.quantity(in, "amount", Dimension.WEIGHT);
        return new Finish.Tare(in.need("of", "what it is", Readings::name), weight);
    }

    private static Quantity length(ObjectReader in, String field) {
        return in.need(
                field,
                "a length",
                Readings.object(length -> FigureReader.quantity(length, "amount", Dimension.LENGTH)));
    }

    private static Portion.EndPieces endPieces(ObjectReader in) {
        if (!in.has("weight")) {
            return new Portion.EndPieces.Sent(home(in, "home"));
        }
        Expected weight = in.need("weight", "a weight", FigureReader.expected(Dimension.WEIGHT));
        return new Portion.EndPieces.Weighed(weight, home(in, "home"));
    }

    private static TrimRule.FatFinish fatFinish(ObjectReader in) {
        List<String> left = in.list("left", Readings.word(List.of("planed", "practically free"), Function.identity()));
        return new TrimRule.FatFinish(
                left.contains("planed"),
                left.contains("practically free"),
                in.optional("measured", "", Readings::text));
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
