package dev.gambrel.yields.conformance;

import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Landmark.AtDistance;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Where a cut is made, against where the house makes it. A cut of the trunk has two ends; only where the house tells both, and
 * neither is the one that is asked for, is the cut known to be made elsewhere.
 */
final class PartingJudge {
    private static final int ENDS = 2;

    private final Offer offer;

    PartingJudge(Offer offer) {
        this.offer = offer;
    }

    Answer answer(Stated asked, Landmark landmark) {
        List<Stated> same = held(held -> held.equals(landmark));
        if (!same.isEmpty()) {
            return new Finding(asked, same.subList(0, 1)).meets(new Margin.None());
        }
        return landmark instanceof AtDistance distance ? distance(asked, distance) : elsewhere(asked, landmark);
    }

    private List<Stated> held(Predicate<Landmark> which) {
        return offer.held(Quality.PARTING, clause -> which.test(((Clause.Parted) clause).landmark()));
    }

    private Answer elsewhere(Stated asked, Landmark landmark) {
        List<Stated> alike = held(held -> held.getClass() == landmark.getClass());
        if (landmark instanceof Landmark.Ribs && !alike.isEmpty()) {
            return new Finding(asked, alike.subList(0, 1)).answer(ConformanceCode.OTHERWISE, Verdict.FAILS);
        } else if (landmark instanceof Landmark.Between && alike.size() >= ENDS) {
            return new Finding(asked, alike).answer(ConformanceCode.PARTED_ELSEWHERE, Verdict.FAILS);
        }
        return alike.isEmpty()
                ? new Finding(asked, List.of()).answer(ConformanceCode.NOTHING_SAID, Verdict.NOT_STATED)
                : new Finding(asked, alike).answer(ConformanceCode.OTHER_WORDS, Verdict.NOT_STATED);
    }

    /** Each end that is asked for is compared with the house's end of the same name, measured from the same thing. */
    private Answer distance(Stated asked, AtDistance wanted) {
        List<Stated> distances = held(held -> held instanceof AtDistance);
        for (Stated stated : distances) {
            AtDistance given = (AtDistance) ((Clause.Parted) stated.clause()).landmark();
            Optional<List<Landmark.End>> ends = sameEnds(wanted, given);
            if (ends.isPresent()) {
                Finding finding = new Finding(asked, List.of(stated));
                return isWithin(wanted.ends(), ends.get())
                        ? finding.meets(new Margin.None())
                        : finding.answer(ConformanceCode.OTHERWISE, Verdict.FAILS);
            }
        }
        return distances.isEmpty()
                ? new Finding(asked, List.of()).answer(ConformanceCode.NOTHING_SAID, Verdict.NOT_STATED)
                : new Finding(asked, distances).answer(ConformanceCode.OTHER_WORDS, Verdict.NOT_STATED);
    }

    private static Optional<List<Landmark.End>> sameEnds(AtDistance wanted, AtDistance given) {
        List<Landmark.End> ends = new ArrayList<>(wanted.ends().size());
        for (Landmark.End end : wanted.ends()) {
            given.ends().stream()
                    .filter(other -> other.from().equals(end.from())
                            && (other.at().isEmpty() || other.at().equalsIgnoreCase(end.at())))
                    .findFirst()
                    .ifPresent(ends::add);
        }
        return ends.size() == wanted.ends().size() ? Optional.of(ends) : Optional.empty();
    }

    private static boolean isWithin(List<Landmark.End> wanted, List<Landmark.End> given) {
        for (int i = 0; i < wanted.size(); i++) {
            int compared = given.get(i).distance().compareTo(wanted.get(i).distance());
            boolean exactly =
                    compared == 0 && given.get(i).atMost() == wanted.get(i).atMost();
            if (!(exactly || wanted.get(i).atMost() && compared <= 0)) {
                return false;
            }
        }
        return true;
    }
}
