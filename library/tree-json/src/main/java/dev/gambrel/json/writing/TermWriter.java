package dev.gambrel.json.writing;

import dev.gambrel.tree.portion.Outside;
import dev.gambrel.tree.term.Term;
import java.util.Optional;

/** Writes terms of supply. */
final class TermWriter {
    private TermWriter() {}

    static Canonical term(Term term) {
        if (term instanceof Term.Weight weight) {
            return Canonical.kind("weight")
                    .putIfStated("limit", FigureWriter.limit(weight.limit()))
                    .putIfStated("outside", outside(weight.outside()));
        } else if (term instanceof Term.Thickness thickness) {
            return Canonical.kind("thickness")
                    .putIfStated("limit", FigureWriter.limit(thickness.limit()))
                    .putIfStated("outside", outside(thickness.outside()));
        } else if (term instanceof Term.Lean lean) {
            return Canonical.kind("lean")
                    .putIfStated("limit", FigureWriter.limit(lean.limit()))
                    .putUnlessEmpty("judged", lean.judged().words());
        } else if (term instanceof Term.Temperature temperature) {
            return Canonical.kind("temperature")
                    .putIfStated("limit", FigureWriter.limit(temperature.limit()))
                    .putUnlessEmpty("where", temperature.where());
        } else if (term instanceof Term.Age age) {
            return Canonical.kind("age")
                    .putIfStated("limit", FigureWriter.limit(age.limit()))
                    .putUnlessEmpty("manner", age.manner())
                    .putUnlessEmpty("since", age.since());
        }
        return withoutFigures(term);
    }

    private static Canonical withoutFigures(Term term) {
        if (term instanceof Term.Life life) {
            return Canonical.kind("life").putIfStated("limit", FigureWriter.limit(life.limit()));
        } else if (term instanceof Term.Refrigerated refrigerated) {
            return Canonical.kind(refrigerated.state().words());
        } else if (term instanceof Term.Pack pack) {
            Canonical.Fields fields = Canonical.kind("pack").put("container", pack.container());
            return pack.together() == 0 ? fields : fields.put("together", pack.together());
        } else if (term instanceof Term.Claim claim) {
            return Canonical.kind("claim").put("name", claim.claim());
        }
        return Canonical.kind("label").put("name", ((Term.Label) term).what());
    }

    static Optional<Canonical> outside(Outside outside) {
        return outside instanceof Outside.OutOf some
                ? Optional.of(Canonical.fields().put("most", some.most()).put("of", some.of()))
                : Optional.empty();
    }
}
