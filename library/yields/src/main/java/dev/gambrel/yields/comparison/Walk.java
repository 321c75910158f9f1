package dev.gambrel.yields.comparison;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.comparison.fact.Fact;
import dev.gambrel.yields.comparison.fact.Meaning;
import dev.gambrel.yields.comparison.fact.Stated;
import dev.gambrel.yields.comparison.fact.Stated.Family;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Two trees walked side by side, O(what is written in them). The walk goes no deeper where a thing is gone, is new or is of
 * another kind: that is the change. Not thread-safe.
 */
final class Walk {
    private static final String SHARE = "share";

    private final List<Change> changes = new ArrayList<>();
    private final List<Stated> gone = new ArrayList<>();
    private final List<Stated> appeared = new ArrayList<>();
    private final List<Route> routes = new ArrayList<>();
    private final List<TradeName> above = new ArrayList<>();

    /** How far down, counted in names, the nearest share lies that was changed at or above where the walk is. */
    private int changedShare;

    /** A part that went to one stream and goes to another. */
    record Route(TradeName from, TradeName to, Change change) {}

    List<Change> changes() {
        return changes;
    }

    List<Stated> gone() {
        return gone;
    }

    List<Stated> appeared() {
        return appeared;
    }

    List<Route> routes() {
        return routes;
    }

    void both(Stated before, Stated after, List<TreePath> givesWay) {
        if (!before.identity().meaning().equals(after.identity().meaning())) {
            add(after, before.identity().what(), ofItself(before), ofItself(after), Effect.BREAKS, givesWay);
            return;
        }
        int outside = changedShare;
        boolean isPart = !after.path().equals(TreePath.ROOT);
        if (isPart) {
            above.add(after.name());
        }
        if (!before.name().text().equals(after.name().text())) {
            add(after, "name", named(before), named(after), Effect.REWORDS, List.of());
        }
        facts(before, after, givesWay);
        below(before, after);
        changedShare = outside;
        if (isPart) {
            above.remove(above.size() - 1);
        }
    }

    private void facts(Stated before, Stated after, List<TreePath> givesWay) {
        Pairs<Fact> same = Pairs.of(before.facts(), after.facts(), fact -> List.of(fact.what(), fact.meaning()));
        for (Pairs.Pair<Fact> pair : same.both()) {
            if (!pair.before().words().equals(pair.after().words())) {
                add(
                        after,
                        pair.after().what(),
                        said(before, pair.before()),
                        said(after, pair.after()),
                        Effect.REWORDS,
                        List.of());
            }
        }
        Pairs<Fact> left = Pairs.of(ordered(same.gone()), ordered(same.appeared()), Fact::what);
        left.both().forEach(pair -> changed(before, after, pair, givesWay));
        for (Fact fact : byThemselves(left.gone())) {
            Effect effect = Judgement.gone(fact.meaning());
            fact(after, fact, said(before, fact), new Said.NotStated(after.place()), effect, givesWay);
        }
        for (Fact fact : byThemselves(left.appeared())) {
            Effect effect = Judgement.appeared(fact.meaning());
            fact(after, fact, new Said.NotStated(before.place()), said(after, fact), effect, givesWay);
        }
    }

    private static List<Fact> byThemselves(List<Fact> facts) {
        return facts.stream()
                .filter(fact -> !(fact.meaning() instanceof Meaning.Outside))
                .toList();
    }

    /** Facts about one thing are paired in the order of their words, since the order of lines has no meaning. */
    private static List<Fact> ordered(List<Fact> facts) {
        boolean several = facts.stream().map(Fact::what).distinct().count() < facts.size();
        return several
                ? facts.stream().sorted(Comparator.comparing(Fact::words)).toList()
                : facts;
    }

    private void changed(Stated before, Stated after, Pairs.Pair<Fact> pair, List<TreePath> givesWay) {
        Effect effect = Judgement.changed(pair.before().meaning(), pair.after().meaning());
        fact(after, pair.after(), said(before, pair.before()), said(after, pair.after()), effect, givesWay);
        if (pair.before().meaning() instanceof Meaning.Route from
                && pair.after().meaning() instanceof Meaning.Route to
                && !from.stream().isEmpty()
                && !to.stream().isEmpty()) {
            Change last = changes.get(changes.size() - 1);
            routes.add(new Route(TradeName.of(from.stream()), TradeName.of(to.stream()), last));
        }
    }

    private void fact(Stated of, Fact fact, Said was, Said is, Effect effect, List<TreePath> givesWay) {
        boolean isShare = of.family() != Family.PORTION && fact.aspect() == Aspect.SHARE;
        if (fact.aspect() == Aspect.DERIVED_SHARE && followsFromAnother(fact)) {
            return;
        }
        if (isShare) {
            changedShare = above.size();
        }
        add(of, fact.what(), was, is, effect, isShare ? givesWay : List.of());
    }

    /** The same share said of something further up alters with any share between: that one is told. */
    private boolean followsFromAnother(Fact derived) {
        String base = derived.what().substring((SHARE + " of ").length());
        int depth = 0;
        for (int i = 0; i < above.size() - 1; i++) {
            depth = above.get(i).key().equals(base) ? i + 1 : depth;
        }
        return changedShare > depth;
    }

    private void below(Stated before, Stated after) {
        List<TreePath> givesWay = after.givesWay().isEmpty() ? before.givesWay() : after.givesWay();
        Pairs<Stated> parts = Pairs.of(
                before.below(), after.below(), part -> List.of(part.family().namespace(), part.name(), part.isRest()));
        parts.both().forEach(pair -> both(pair.before(), pair.after(), givesWay));
        for (Stated part : parts.gone()) {
            gone.add(part);
            Effect effect = Judgement.gone(part.family().loss());
            add(
                    part,
                    part.identity().what(),
                    ofItself(part),
                    new Said.NotThere(after.place()),
                    effect,
                    takingUp(part, givesWay));
        }
        for (Stated part : parts.appeared()) {
            appeared.add(part);
            Effect effect = Judgement.appeared(part.family().loss());
            add(
                    part,
                    part.identity().what(),
                    new Said.NotThere(before.place()),
                    ofItself(part),
                    effect,
                    takingUp(part, givesWay));
        }
    }

    /** Portions and streams take no share, and a rest does not make way for itself. */
    private static List<TreePath> takingUp(Stated part, List<TreePath> givesWay) {
        boolean hasShare = part.facts().stream().anyMatch(fact -> fact.what().equals(SHARE));
        return hasShare ? givesWay : List.of();
    }

    private static Said said(Stated of, Fact fact) {
        return new Said.Stated(of.place(fact), fact.words(), fact.quantities());
    }

    private static Said named(Stated of) {
        return new Said.Stated(of.place(), of.name().text(), List.of());
    }

    private static Said ofItself(Stated of) {
        return new Said.Stated(of.place(), of.identity().words(), List.of());
    }

    private void add(Stated of, String what, Said was, Said is, Effect effect, List<TreePath> givesWay) {
        changes.add(new Change(Names.of(of), what, was, is, effect, givesWay));
    }
}
