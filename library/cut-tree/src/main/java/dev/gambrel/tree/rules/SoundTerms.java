package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TermCode;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.term.Term;
import dev.gambrel.tree.term.TermWords;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Each term of supply is laid down once and can be kept. */
final class SoundTerms implements Rule {
    private static final Quantity ALL = new Quantity(BigDecimal.valueOf(100), Unit.PERCENT);
    private static final Quantity ABSOLUTE_ZERO = new Quantity(new BigDecimal("-273.15"), Unit.CELSIUS);

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            if (site.isCarcass() && !site.isUnsure()) {
                check(inspection.tree().terms(), TreePath.ROOT, "carcass", found);
            } else if (!site.isUnsure()) {
                check(site.cut().description().terms(), site.path(), site.name(), found);
            }
        }
    }

    private static void check(List<Term> terms, TreePath path, String cut, Consumer<Diagnostic> found) {
        Map<Object, Integer> laidDown = new HashMap<>();
        for (int i = 0; i < terms.size(); i++) {
            Term term = terms.get(i);
            Place.InTree at = new Place.InTree(path, Aspect.SUPPLY, i);
            Integer first = laidDown.putIfAbsent(what(term), i);
            if (first != null) {
                found.accept(Diagnostic.of(TermCode.TERM_TWICE, at)
                        .with("cut", cut)
                        .with("what", TermWords.of(term))
                        .related(new Place.InTree(path, Aspect.SUPPLY, first), "laid down here first")
                        .help("Keep one of the two."));
            }
            TermWords.limit(term).ifPresent(limit -> checkLimit(term, limit, at, cut, found));
        }
    }

    /** Claims and labels may be many, each another. */
    private static Object what(Term term) {
        return term instanceof Term.Claim || term instanceof Term.Label ? term : term.getClass();
    }

    private static void checkLimit(Term term, Limit limit, Place.InTree at, String cut, Consumer<Diagnostic> found) {
        Optional<Quantity> low = limit.least();
        Optional<Quantity> high = limit.most();
        if (low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0) {
            found.accept(Diagnostic.of(TreeCode.REVERSED_RANGE, at)
                    .with("low", low.get())
                    .with("high", high.get())
                    .help("Write the smaller figure first: between " + high.get() + " and " + low.get()));
            return;
        }
        low.or(() -> high)
                .filter(figure -> isTooLow(term, figure))
                .ifPresent(figure -> found.accept(impossible(term, figure, lowest(term), at, cut)));
        if (term instanceof Term.Lean) {
            high.or(() -> low)
                    .filter(figure -> figure.compareTo(ALL) > 0)
                    .ifPresent(figure -> found.accept(impossible(term, figure, "no more than 100 %", at, cut)));
        }
    }

    private static boolean isTooLow(Term term, Quantity figure) {
        return switch (figure.dimension()) {
            case TEMPERATURE -> figure.compareTo(ABSOLUTE_ZERO) < 0;
            case WEIGHT, LENGTH -> figure.common().signum() <= 0;
            default -> figure.common().signum() < 0;
        };
    }

    private static String lowest(Term term) {
        if (term instanceof Term.Temperature) {
            return "nothing is colder than " + ABSOLUTE_ZERO;
        }
        boolean mayBeNothing = !(term instanceof Term.Weight || term instanceof Term.Thickness);
        return mayBeNothing ? "no less than 0" : "more than 0";
    }

    private static Diagnostic impossible(Term term, Quantity figure, String allowed, Place.InTree at, String cut) {
        return Diagnostic.of(TermCode.TERM_IMPOSSIBLE, at)
                .with("cut", cut)
                .with("what", TermWords.of(term))
                .with("figure", figure)
                .with("allowed", allowed)
                .help("Look at the figure and its unit.");
    }
}
