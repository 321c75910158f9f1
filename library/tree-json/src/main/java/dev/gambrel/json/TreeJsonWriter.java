package dev.gambrel.json;

import dev.gambrel.tree.Allowance;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Standing;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.choice.Grade;
import java.util.Optional;

/** Writes a cut tree as canonical JSON: equal trees give equal text. */
public final class TreeJsonWriter {
    /** What the field "format" says. */
    public static final String FORMAT = "gambrel cut tree";

    /** The version that is written, and the only one that is read. */
    public static final int VERSION = 1;

    private TreeJsonWriter() {}

    /**
     * The tree as JSON.
     *
     * <p>Declared order is kept, what is not stated is left out, and decimals are written in full as they stand: 33.0
     * stays 33.0. A decimal of negative scale (1E+3) is written out (1000) and is read back as that. The text is meant
     * for UTF-8. Costs O(length of the text).
     *
     * @param tree any tree, whether or not it keeps the rules
     * @return the text, ending in a line feed
     */
    public static String write(CutTree tree) {
        Canonical.Fields root = Canonical.fields()
                .put("format", FORMAT)
                .put("version", VERSION)
                .put("specification", specification(tree.specification()))
                .put("carcass", carcass(tree.carcass()))
                .put("species", SpeciesWriter.species(tree.species()))
                .putUnlessEmpty("streams", tree.streams(), TreeJsonWriter::stream)
                .putUnlessEmpty("sources", tree.sources(), TreeJsonWriter::source)
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
        return fields.putUnlessEmpty("because", standing.because())
                .putUnlessEmpty("allowances", specification.allowances(), TreeJsonWriter::allowance);
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
                .putUnlessEmpty("steps", carcass.steps(), TreeJsonWriter::step)
                .putUnlessEmpty("grades", carcass.grades(), TreeJsonWriter::grade);
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
