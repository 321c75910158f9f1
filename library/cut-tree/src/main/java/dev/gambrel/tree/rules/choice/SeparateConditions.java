package dev.gambrel.tree.rules.choice;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.inspection.ChoiceCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The conditions of one cut are about one thing, can be so, and do not overlap; and where no way is the rule they leave
 * nothing out.
 */
public final class SeparateConditions implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<TradeName, GradeScale> grades = new HashMap<>();
        inspection.tree().carcass().grades().forEach(grade -> grades.putIfAbsent(grade.name(), GradeScale.of(grade)));
        for (Site site : inspection.sites()) {
            List<Conditioned> ways = conditioned(site);
            if (!ways.isEmpty() && !site.isUnsure()) {
                checkSite(site, ways, grades, found);
            }
        }
    }

    private static List<Conditioned> conditioned(Site site) {
        List<Conditioned> ways = new ArrayList<>(0);
        for (Way way : site.ways()) {
            if (way.choice() instanceof Choice.When when) {
                ways.add(new Conditioned(way, when.condition()));
            }
        }
        return ways;
    }

    private static void checkSite(
            Site site, List<Conditioned> ways, Map<TradeName, GradeScale> grades, Consumer<Diagnostic> found) {
        Optional<Conditioned> other =
                ways.stream().filter(way -> !way.isLike(ways.get(0))).findFirst();
        if (other.isPresent()) {
            found.accept(differ(site, ways.get(0), other.get()));
            return;
        }
        Optional<Coverage> coverage = Coverage.of(ways, grades);
        if (coverage.isEmpty()) {
            return;
        }
        coverage.get().impossible().forEach(way -> found.accept(impossible(site, way)));
        coverage.get().overlaps().forEach(overlap -> found.accept(overlap(site, overlap)));
        boolean hasRule = site.ways().stream().anyMatch(way -> way.choice() instanceof Choice.AsARule);
        boolean hasShares = site.ways().stream().anyMatch(way -> way.choice() instanceof Choice.OfPieces);
        List<String> gaps = coverage.get().gaps();
        if (!hasRule
                && !hasShares
                && !gaps.isEmpty()
                && coverage.get().impossible().isEmpty()) {
            found.accept(gap(site, ways.get(0), gaps));
        }
    }

    private static Diagnostic differ(Site site, Conditioned first, Conditioned second) {
        return Diagnostic.of(ChoiceCode.CONDITIONS_DIFFER, site.at(second.way().work(), Aspect.CHOICE))
                .with("cut", site.name())
                .with("first", first.condition().subject())
                .with("second", second.condition().subject())
                .related(
                        site.at(first.way().work(), Aspect.CHOICE),
                        "asks about " + first.condition().subject())
                .help("Let the ways of one cut ask about one thing; for two, write ways in the braces of a way.");
    }

    private static Diagnostic impossible(Site site, Conditioned way) {
        return Diagnostic.of(ChoiceCode.IMPOSSIBLE_CONDITION, site.at(way.way().work(), Aspect.CHOICE))
                .with("condition", way.condition())
                .help("Look for two figures or values in the wrong order.");
    }

    private static Diagnostic overlap(Site site, Coverage.Overlap overlap) {
        Conditioned first = overlap.first();
        Conditioned second = overlap.second();
        return Diagnostic.of(ChoiceCode.CONDITIONS_OVERLAP, site.at(second.way().work(), Aspect.CHOICE))
                .with("subject", first.condition().subject())
                .with("overlap", overlap.words())
                .with("cut", site.name())
                .with("first", first.way().name())
                .with("second", second.way().name())
                .related(site.at(first.way().work(), Aspect.CHOICE), "the other way")
                .help(
                        first.condition() instanceof Condition.Graded
                                ? "Take it out of one of the two."
                                : "Let one begin where the other ends, at one figure: “under” and “at least”, or"
                                        + " “at most” and “over”.");
    }

    private static Diagnostic gap(Site site, Conditioned first, List<String> gaps) {
        return Diagnostic.of(ChoiceCode.CONDITIONS_LEAVE_GAP, site.at(Aspect.NAME))
                .with("cut", site.name())
                .with("subject", first.condition().subject())
                .with("gap", String.join(", or ", gaps))
                .help("Let the conditions meet, or write a way for what they leave out.")
                .help("Or make one way the rule, which takes what no condition takes: worked as "
                        + first.way().name() + ", as a rule");
    }
}
