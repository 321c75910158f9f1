package dev.gambrel.json;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.json.located.FileFormat;
import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.ObjectReader;
import dev.gambrel.json.located.Reading;
import dev.gambrel.json.located.Readings;
import dev.gambrel.json.located.Shown;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.Allowance;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Side;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Standing;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.term.Judged;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;

/** Reads the whole tree, down to the carcass, the streams and the sources. */
final class TreeReader {
    private static final FileFormat OURS = new FileFormat(TreeJsonWriter.FORMAT, TreeJsonWriter.VERSION);
    private static final Reading<Basis> BASIS = Readings.word(List.of(Basis.values()), Basis::words);
    private static final Reading<Stream.Kind> STREAM_KIND =
            Readings.word(List.of(Stream.Kind.values()), Stream.Kind::words);
    private static final Reading<Side> SIDE = Readings.word(List.of(Side.values()), Side::words);
    private static final Reading<Source.Kind> SOURCE_KIND =
            Readings.word(List.of(Source.Kind.values()), Source.Kind::words);

    private TreeReader() {}

    /** A file's outermost object; where format or version is another one, nothing else in it is judged. */
    static CutTree file(ObjectReader in) {
        boolean isFormat = in.need("format", "\"" + OURS.format() + "\"", OURS::isFormat);
        boolean isVersion = in.need("version", String.valueOf(OURS.version()), OURS::isVersion);
        return tree(isFormat && isVersion ? in : in.givenUp());
    }

    private static CutTree tree(ObjectReader in) {
        return new CutTree(
                in.need("specification", "title and revision", Readings.object(TreeReader::specification)),
                in.need("carcass", "what its weight is taken of", Readings.object(TreeReader::carcass)),
                in.need("species", "which animal it is", Readings.object(SpeciesReader::species)),
                in.list("streams", Readings.object(TreeReader::stream)),
                in.list("sources", Readings.object(TreeReader::source)),
                in.list("parts", PartReader::part),
                in.list("notes", Readings::text));
    }

    private static Specification specification(ObjectReader in) {
        return new Specification(
                in.need("title", "the house's title", Readings::text),
                in.need("revision", "a whole number", Readings::count),
                new Standing(
                        in.optional("replaces", 0, Readings::count),
                        in.optional("inForceFrom", new Standing.From.NotStated(), TreeReader::inForceFrom),
                        in.optional("because", "", Readings::text)),
                in.list("allowances", Readings.object(TreeReader::allowance)),
                in.optional("side", Side.HOUSE, SIDE),
                in.list("terms", TermReader.TERM));
    }

    private static Standing.From inForceFrom(Located value, Findings findings) {
        if (value instanceof Located.Text text) {
            try {
                return new Standing.From.Day(LocalDate.parse(text.text()));
            } catch (DateTimeParseException noDay) {
                findings.add(findings.at(JsonCode.WRONG_TYPE, value.pointer(), value.span())
                        .with("found", "\"" + Shown.of(text.text()) + "\"")
                        .with("allowed", "a day such as \"2026-10-01\""));
            }
        } else {
            findings.wrongType(value, "a day such as \"2026-10-01\"");
        }
        return new Standing.From.NotStated();
    }

    private static Allowance allowance(ObjectReader in) {
        return new Allowance(
                new TreePath(in.list("path", Readings::name)),
                in.need("finding", "the warning by its number or name", Readings::text),
                in.need("reason", "why it is allowed", Readings::text));
    }

    private static Carcass carcass(ObjectReader in) {
        return new Carcass(
                basis(in, "basis"),
                in.list("dressing", Readings::text),
                in.optional("band", new WeightBand.NotStated(), Readings.object(FigureReader::band)),
                in.list("steps", Readings.object(TreeReader::step)),
                in.list("grades", Readings.object(TreeReader::grade)),
                PredictorReader.predictors(in));
    }

    private static Grade grade(ObjectReader in) {
        return new Grade(DescriptionReader.name(in), in.list("values", Readings::name));
    }

    private static BasisStep step(ObjectReader in) {
        return new BasisStep(
                basis(in, "from"),
                basis(in, "to"),
                in.need("loss", "what the loss is called", Readings::name),
                in.need("share", "how much is lost", FigureReader.expected(Dimension.SHARE)),
                in.optional("hanging", new BasisStep.Hanging.NotStated(), Readings.object(TreeReader::hanging)),
                in.list("sources", Readings::name));
    }

    private static BasisStep.Hanging hanging(ObjectReader in) {
        return new BasisStep.Hanging.Daily(
                in.need("perDay", "how much is lost each day", FigureReader.expected(Dimension.SHARE)),
                in.need("days", "how many days", TreeReader::days));
    }

    private static int days(Located value, Findings findings) {
        int days = Readings.count(value, findings);
        boolean fits = days >= 1 && days <= BasisStep.Hanging.MOST_DAYS;
        if (!fits && value instanceof Located.Figure figure) {
            findings.add(findings.at(JsonCode.WRONG_TYPE, value.pointer(), value.span())
                    .with("found", Shown.of(figure.digits()))
                    .with("allowed", "a number of days from 1 to " + BasisStep.Hanging.MOST_DAYS));
        }
        return fits ? days : 1;
    }

    private static Basis basis(ObjectReader in, String field) {
        return in.need(field, "live, in skin, warm or cold", BASIS);
    }

    private static Stream stream(ObjectReader in) {
        return new Stream(
                DescriptionReader.name(in),
                in.need("kind", "saleable, by-product or waste", STREAM_KIND),
                in.optional("lean", new Stream.Lean.NotStated(), Readings.object(TreeReader::lean)),
                in.list("onlyFrom", Readings::name));
    }

    private static Stream.Lean lean(ObjectReader in) {
        return new Stream.Lean.Stated(
                FigureReader.quantity(in, "amount", Dimension.SHARE),
                in.optional("judged", Judged.NOT_STATED, TermReader.JUDGED));
    }

    static SourceLean sourceLean(ObjectReader in) {
        return new SourceLean.Stated(
                in.need("percent", "how lean it is", FigureReader.expected(Dimension.SHARE)),
                in.optional("judged", Judged.NOT_STATED, TermReader.JUDGED));
    }

    private static Source source(ObjectReader in) {
        return new Source(
                DescriptionReader.name(in),
                in.need("kind", "how sure it is", SOURCE_KIND),
                in.need("citation", "enough to find it again", Readings::text));
    }
}
