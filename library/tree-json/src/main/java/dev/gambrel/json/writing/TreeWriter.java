package dev.gambrel.json.writing;

import dev.gambrel.tree.Allowance;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Side;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Standing;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.choice.Grade;
import java.util.Optional;

/** Writes the whole tree, down to the carcass, the streams and the sources. */
public final class TreeWriter {
    private TreeWriter() {}

    /**
     * The tree as JSON.
     *
     * @param format what kind of file it is said to be
     * @param version the version of the form
     * @param tree any tree
     * @return the text, ending in a line feed
     */
    public static String write(String format, int version, CutTree tree) {
        Canonical.Fields root = Canonical.fields()
                .put("format", format)
                .put("version", version)
                .put("specification", specification(tree.specification()))
                .put("carcass", carcass(tree.carcass()))
                .put("species", SpeciesWriter.species(tree.species()))
                .putUnlessEmpty("streams", tree.streams(), TreeWriter::stream)
                .putUnlessEmpty("sources", tree.sources(), TreeWriter::source)
                .putUnlessEmpty("parts", tree.parts(), PartWriter::part)
                .putUnlessEmpty("notes", tree.notes());
        return CanonicalPrinter.print(root);
    }

    private static Canonical specification(Specification specification) {
        Standing standing = specification.standing();
        Canonical.Fields fields =
                Canonical.fields().put("title", specification.title()).put("revision", specification.revision());
        if (standing.replaces() > 0) {
            fields.put("replaces", standing.replaces());
        }
        if (standing.from() instanceof Standing.From.Day from) {
            fields.put("inForceFrom", from.day());
        }
        fields.putUnlessEmpty("because", standing.because())
                .putUnlessEmpty("allowances", specification.allowances(), TreeWriter::allowance);
        if (specification.side() == Side.BUYER) {
            fields.put("side", specification.side().words());
        }
        return fields.putUnlessEmpty("terms", specification.terms(), TermWriter::term);
    }

    private static Canonical allowance(Allowance allowance) {
        return Canonical.fields()
                .putUnlessEmpty("path", allowance.path().names())
                .put("finding", allowance.finding())
                .put("reason", allowance.reason());
    }

    private static Canonical carcass(Carcass carcass) {
        return Canonical.fields()
                .put("basis", carcass.basis().words())
                .putUnlessEmpty("dressing", carcass.dressing())
                .putIfStated("band", FigureWriter.band(carcass.band()))
                .putUnlessEmpty("steps", carcass.steps(), TreeWriter::step)
                .putUnlessEmpty("grades", carcass.grades(), TreeWriter::grade)
                .putUnlessEmpty("measures", carcass.predictors().measures(), PredictorWriter::measure)
                .putUnlessEmpty("estimates", carcass.predictors().equations(), PredictorWriter::equation);
    }

    private static Canonical grade(Grade grade) {
        return Canonical.fields().put("name", grade.name()).putUnlessEmpty("values", grade.values());
    }

    private static Canonical step(BasisStep step) {
        return Canonical.fields()
                .put("from", step.from().words())
                .put("to", step.to().words())
                .put("loss", step.loss())
                .put("share", FigureWriter.expected(step.share()))
                .putIfStated("hanging", hanging(step.hanging()))
                .putUnlessEmpty("sources", step.sources());
    }

    private static Optional<Canonical> hanging(BasisStep.Hanging hanging) {
        return hanging instanceof BasisStep.Hanging.Daily daily
                ? Optional.of(Canonical.fields()
                        .put("perDay", FigureWriter.expected(daily.perDay()))
                        .put("days", daily.days()))
                : Optional.empty();
    }

    private static Canonical stream(Stream stream) {
        return Canonical.fields()
                .put("name", stream.name())
                .put("kind", stream.kind().words())
                .putIfStated("lean", lean(stream.lean()))
                .putUnlessEmpty("onlyFrom", stream.onlyFrom());
    }

    private static Optional<Canonical> lean(Stream.Lean lean) {
        if (lean instanceof Stream.Lean.Stated stated) {
            return Optional.of(FigureWriter.quantity("amount", stated.percent())
                    .putUnlessEmpty("judged", stated.judged().words()));
        }
        return Optional.empty();
    }

    private static Canonical source(Source source) {
        return Canonical.fields()
                .put("name", source.name())
                .put("kind", source.kind().words())
                .put("citation", source.citation());
    }
}
