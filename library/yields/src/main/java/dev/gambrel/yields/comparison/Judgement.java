package dev.gambrel.yields.comparison;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.comparison.fact.Meaning;
import dev.gambrel.yields.comparison.fact.Meaning.Bounded;
import dev.gambrel.yields.comparison.fact.Meaning.Figure;
import dev.gambrel.yields.comparison.fact.Meaning.Free;
import dev.gambrel.yields.comparison.fact.Meaning.OneOf;
import dev.gambrel.yields.comparison.fact.Meaning.Outside;
import dev.gambrel.yields.comparison.fact.Meaning.ReliedOn;
import dev.gambrel.yields.comparison.fact.Meaning.Route;
import dev.gambrel.yields.comparison.fact.Stated.Loss;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;

/** What a difference does. */
final class Judgement {
    private Judgement() {}

    /** Of two meanings that differ. */
    static Effect changed(Meaning was, Meaning is) {
        if (was.getClass() != is.getClass()) {
            return Effect.BREAKS;
        } else if (was instanceof Bounded before) {
            Bounded after = (Bounded) is;
            return before.of().equals(after.of()) ? changed(before.limit(), after.limit()) : Effect.BREAKS;
        } else if (was instanceof Outside before) {
            return changed(before.share().limit(), ((Outside) is).share().limit());
        } else if (was instanceof OneOf before) {
            return changed(before.names(), ((OneOf) is).names());
        } else if (was instanceof Figure before) {
            return before.kind().equals(((Figure) is).kind())
                    ? Effect.ALTERS_FIGURES
                    : ofOtherKind(before, (Figure) is);
        } else if (was instanceof ReliedOn before) {
            return before.value().equals(((ReliedOn) is).value()) ? Effect.ALTERS_WORK : Effect.BREAKS;
        }
        return neither(was);
    }

    /** A share may be written or estimated; a portion of another measure is another portion. */
    private static Effect ofOtherKind(Figure was, Figure is) {
        Set<String> measures = Set.of("weight", "thickness");
        return measures.contains(was.kind()) && measures.contains(is.kind()) ? Effect.BREAKS : Effect.ALTERS_FIGURES;
    }

    private static Effect changed(Limit was, Limit is) {
        if (isOver(was.least(), is.most()) || isOver(is.least(), was.most())) {
            return Effect.BREAKS;
        }
        int low = compare(was.least(), is.least(), -1);
        int high = -compare(was.most(), is.most(), 1);
        return of(low > 0 || high > 0, low < 0 || high < 0);
    }

    private static boolean isOver(Optional<Quantity> least, Optional<Quantity> most) {
        return least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0;
    }

    /** More than 0 where the later end is higher; an end that is not there lies below all or above all. */
    private static int compare(Optional<Quantity> was, Optional<Quantity> is, int endless) {
        if (was.isPresent() && is.isPresent()) {
            return is.get().compareTo(was.get());
        }
        return endless * Boolean.compare(was.isPresent(), is.isPresent());
    }

    private static Effect changed(Set<String> was, Set<String> is) {
        return Collections.disjoint(was, is) ? Effect.BREAKS : of(!is.containsAll(was), !was.containsAll(is));
    }

    /** Neither happens where "alike to the eye" is given a figure that leaves all room: that is words. */
    private static Effect of(boolean tighter, boolean looser) {
        if (tighter && looser) {
            return Effect.SHIFTS;
        }
        return tighter ? Effect.TIGHTENS : looser ? Effect.LOOSENS : Effect.REWORDS;
    }

    /** Of what is said no longer. */
    static Effect gone(Meaning was) {
        if (was instanceof Bounded || was instanceof OneOf) {
            return Effect.LOOSENS;
        }
        return was instanceof ReliedOn ? Effect.BREAKS : neither(was);
    }

    /** Of what was not said before. */
    static Effect appeared(Meaning is) {
        if (is instanceof Bounded || is instanceof OneOf) {
            return Effect.TIGHTENS;
        }
        return is instanceof ReliedOn ? Effect.ADDS : neither(is);
    }

    private static Effect neither(Meaning said) {
        return said instanceof Figure || said instanceof Route
                ? Effect.ALTERS_FIGURES
                : said instanceof Free ? Effect.REWORDS : Effect.ALTERS_WORK;
    }

    /** Of a thing that is there no longer. */
    static Effect gone(Loss loss) {
        return switch (loss) {
            case OF_WHAT_IS_RELIED_ON -> Effect.BREAKS;
            case OF_A_LIMIT -> Effect.LOOSENS;
            case OF_A_FIGURE -> Effect.ALTERS_FIGURES;
        };
    }

    /** Of a thing that was not there before. */
    static Effect appeared(Loss loss) {
        return switch (loss) {
            case OF_WHAT_IS_RELIED_ON -> Effect.ADDS;
            case OF_A_LIMIT -> Effect.TIGHTENS;
            case OF_A_FIGURE -> Effect.ALTERS_FIGURES;
        };
    }
}
