package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.tree.term.Term;
import dev.gambrel.tree.term.TermWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/** Terms of supply: what a house undertakes, or a buyer asks for. */
final class SupplyFacts {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private SupplyFacts() {}

    static void add(List<Term> terms, Facts facts) {
        for (int i = 0; i < terms.size(); i++) {
            Term term = terms.get(i);
            Optional<Limit> limit = TermWords.limit(term);
            if (limit.isPresent()) {
                limited(term, limit.get(), i, facts);
            } else {
                undertaken(term, i, facts);
            }
        }
    }

    private static void limited(Term term, Limit limit, int index, Facts facts) {
        String of = of(term);
        String words = (limit + " " + of).strip();
        facts.limit(TermWords.of(term), Aspect.SUPPLY, index, new Meaning.Bounded(of, limit), words);
        if (term instanceof Term.Weight weight) {
            outside(weight.outside(), "weight", Aspect.SUPPLY, index, facts);
        } else if (term instanceof Term.Thickness thickness) {
            outside(thickness.outside(), "thickness", Aspect.SUPPLY, index, facts);
        }
    }

    /** What else tells two limits apart: what is taken in two ways cannot be compared. */
    private static String of(Term term) {
        if (term instanceof Term.Lean lean) {
            return lean.judged().words();
        } else if (term instanceof Term.Temperature temperature) {
            return temperature.where().isEmpty() ? "" : "at " + temperature.where();
        } else if (term instanceof Term.Age age) {
            return (age.manner() + (age.since().isEmpty() ? "" : " from " + age.since())).strip();
        }
        return "";
    }

    /** None outside is what holds where nothing is said. */
    static void outside(Outside outside, String of, Aspect aspect, int index, Facts facts) {
        BigDecimal share = outside instanceof Outside.OutOf out
                ? BigDecimal.valueOf(out.most())
                        .multiply(HUNDRED)
                        .divide(BigDecimal.valueOf(out.of()), MathContext.DECIMAL128)
                : BigDecimal.ZERO;
        Limit limit = new Limit.AtMost(new Quantity(share, Unit.PERCENT));
        Meaning meaning = new Meaning.Outside(new Meaning.Bounded("", limit));
        facts.add("pieces outside the " + of, aspect, index, meaning, outside.toString());
    }

    private static void undertaken(Term term, int index, Facts facts) {
        if (term instanceof Term.Refrigerated refrigerated) {
            String state = refrigerated.state().words();
            facts.reliedOn("refrigeration", Aspect.SUPPLY, index, List.of(state), state);
        } else if (term instanceof Term.Pack pack) {
            String words =
                    pack.together() == 0 ? pack.container().text() : pack.together() + " to a " + pack.container();
            List<String> value =
                    List.of(Integer.toString(pack.together()), pack.container().key());
            facts.reliedOn("pack", Aspect.SUPPLY, index, value, words);
        } else if (term instanceof Term.Claim claim) {
            facts.reliedOn(
                    "claim of being " + claim.claim().key(),
                    Aspect.SUPPLY,
                    index,
                    List.of(claim.claim().key()),
                    claim.claim().text());
        } else {
            Term.Label label = (Term.Label) term;
            facts.reliedOn(
                    "label tells " + label.what().key(),
                    Aspect.SUPPLY,
                    index,
                    List.of(label.what().key()),
                    label.what().text());
        }
    }
}
