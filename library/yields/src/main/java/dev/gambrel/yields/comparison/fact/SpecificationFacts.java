package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.tree.Allowance;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Standing;
import java.util.List;

/** What a specification says of itself. */
final class SpecificationFacts {
    private SpecificationFacts() {}

    static void add(CutTree tree, Facts facts) {
        Specification specification = tree.specification();
        facts.free("title", Aspect.TITLE, 0, specification.title());
        facts.free("revision", Aspect.TITLE, 0, revision(specification));
        facts.reliedOn(
                "who speaks",
                Aspect.TITLE,
                specification.side().name(),
                specification.side().words());
        SupplyFacts.add(specification.terms(), facts);
        notes(tree.notes(), facts);
        for (int i = 0; i < tree.sources().size(); i++) {
            Source source = tree.sources().get(i);
            facts.free(
                    "source " + source.name().key(),
                    Aspect.SOURCE,
                    i,
                    source.name() + ", " + source.kind().words() + ": " + source.citation());
        }
        for (int i = 0; i < specification.allowances().size(); i++) {
            Allowance allowance = specification.allowances().get(i);
            facts.free(
                    "allowed at " + path(allowance) + ": " + allowance.finding(),
                    Aspect.ALLOWANCE,
                    i,
                    allowance.reason());
        }
    }

    private static String revision(Specification specification) {
        Standing standing = specification.standing();
        StringBuilder words = new StringBuilder("revision ").append(specification.revision());
        if (standing.replaces() > 0) {
            words.append(", replaces revision ").append(standing.replaces());
        }
        if (standing.from() instanceof Standing.From.Day from) {
            words.append(", in force from ").append(from.day());
        }
        return words.append(standing.because().isEmpty() ? "" : ", because: " + standing.because())
                .toString();
    }

    private static String path(Allowance allowance) {
        return allowance.path().names().isEmpty()
                ? allowance.path().last()
                : String.join(" / ", Exact.ordered(allowance.path().names()));
    }

    static void notes(List<String> notes, Facts facts) {
        for (int i = 0; i < notes.size(); i++) {
            facts.free("note", Aspect.NOTE, i, notes.get(i));
        }
    }
}
