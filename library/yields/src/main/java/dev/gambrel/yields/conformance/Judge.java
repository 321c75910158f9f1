package dev.gambrel.yields.conformance;

import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.List;
import java.util.function.Predicate;

/** Holds one clause against what the house lays down of a product. */
final class Judge {
    private final Offer offer;

    Judge(Offer offer) {
        this.offer = offer;
    }

    Answer answer(Stated asked) {
        Clause clause = asked.clause();
        if (clause instanceof Clause.Limited limited) {
            return limited(asked, limited.quality());
        } else if (clause instanceof Clause.State state) {
            return state(asked, state);
        } else if (clause instanceof Clause.Tissue tissue) {
            return tissue(asked, tissue);
        } else if (clause instanceof Clause.Carried carried) {
            return carried(asked, carried);
        } else if (clause instanceof Clause.Packed packed) {
            return packed(asked, packed);
        } else if (clause instanceof Clause.Parted parted) {
            return new PartingJudge(offer).answer(asked, parted.landmark());
        }
        return numbered(asked, ((Clause.Numbered) clause).reference());
    }

    private Answer limited(Stated asked, Quality quality) {
        List<Stated> held = limits(quality);
        if (!held.isEmpty()) {
            return LimitJudge.judge(asked, held.get(0));
        }
        List<Stated> other = limits(otherFat(quality));
        if (isFat(quality) && !other.isEmpty()) {
            return otherFat(asked, other.get(0));
        }
        return silence(asked, clause -> clause instanceof Clause.Limited);
    }

    private List<Stated> limits(Quality quality) {
        return offer.held(quality, clause -> clause instanceof Clause.Limited);
    }

    private static boolean isFat(Quality quality) {
        return quality == Quality.FAT_AVERAGE || quality == Quality.FAT_AT_ANY_POINT;
    }

    private static Quality otherFat(Quality quality) {
        return quality == Quality.FAT_AVERAGE ? Quality.FAT_AT_ANY_POINT : Quality.FAT_AVERAGE;
    }

    /** An average is no more than the most; nothing else follows. */
    private Answer otherFat(Stated asked, Stated held) {
        if (asked.clause().quality() == Quality.FAT_AVERAGE) {
            Answer asIf = LimitJudge.judge(asked, held);
            if (asIf.verdict() == Verdict.MEETS) {
                return new Finding(asked, List.of(held))
                        .answer(ConformanceCode.AVERAGE_FOLLOWS, Verdict.MEETS, asIf.margin());
            }
        }
        return new Finding(asked, List.of(held)).answer(ConformanceCode.POINT_PROVES_NO_AVERAGE, Verdict.NOT_STATED);
    }

    private Answer state(Stated asked, Clause.State state) {
        List<Stated> held = offer.held(state.quality(), clause -> true);
        if (held.isEmpty()) {
            return silence(asked, clause -> true);
        }
        Finding finding = new Finding(asked, held.subList(0, 1));
        if (held.get(0).clause().equals(state)) {
            return finding.meets(new Margin.None());
        }
        boolean isComparable = held.get(0).clause() instanceof Clause.State;
        return isComparable
                ? finding.answer(ConformanceCode.OTHERWISE, Verdict.FAILS)
                : finding.answer(ConformanceCode.OTHER_WORDS, Verdict.NOT_STATED);
    }

    private Answer tissue(Stated asked, Clause.Tissue tissue) {
        Predicate<Clause> same =
                clause -> clause instanceof Clause.Tissue held && held.tissue().equals(tissue.tissue());
        List<Stated> held = offer.held(Quality.TISSUE, same);
        if (held.isEmpty()) {
            return silence(asked, same);
        }
        boolean met = held.stream().anyMatch(stated -> stated.clause().equals(tissue));
        Finding finding = new Finding(asked, held);
        return met ? finding.meets(new Margin.None()) : finding.answer(ConformanceCode.OTHERWISE, Verdict.FAILS);
    }

    private Answer carried(Stated asked, Clause.Carried carried) {
        List<Stated> held = offer.nearest(carried.quality()).stream()
                .filter(stated -> stated.clause().equals(carried))
                .toList();
        return held.isEmpty()
                ? new Finding(asked, List.of()).answer(ConformanceCode.NOTHING_SAID, Verdict.NOT_STATED)
                : new Finding(asked, held.subList(0, 1)).meets(new Margin.None());
    }

    private Answer packed(Stated asked, Clause.Packed packed) {
        List<Stated> held = offer.held(Quality.PACK, clause -> true);
        if (held.isEmpty()) {
            return silence(asked, clause -> true);
        }
        Finding finding = new Finding(asked, held.subList(0, 1));
        Clause.Packed given = (Clause.Packed) held.get(0).clause();
        if (!given.container().equals(packed.container())) {
            return finding.answer(ConformanceCode.OTHER_WORDS, Verdict.NOT_STATED);
        } else if (packed.together() == 0 || packed.together() == given.together()) {
            return finding.meets(new Margin.None());
        }
        return given.together() == 0
                ? finding.answer(ConformanceCode.OTHER_WORDS, Verdict.NOT_STATED)
                : finding.answer(ConformanceCode.OTHERWISE, Verdict.FAILS);
    }

    private Answer numbered(Stated asked, Reference reference) {
        List<Stated> held = offer.held(
                Quality.NUMBER,
                clause -> ((Clause.Numbered) clause).reference().scheme().equals(reference.scheme()));
        if (held.isEmpty()) {
            return new Finding(asked, List.of()).answer(ConformanceCode.NOTHING_SAID, Verdict.NOT_STATED);
        }
        List<Stated> sameNumber = held.stream()
                .filter(stated -> isNumber(stated, reference.number()))
                .toList();
        if (sameNumber.isEmpty()) {
            return new Finding(asked, held).answer(ConformanceCode.OTHERWISE, Verdict.FAILS);
        }
        return sameNumber(new Finding(asked, sameNumber.subList(0, 1)), reference);
    }

    private static boolean isNumber(Stated stated, String number) {
        return ((Clause.Numbered) stated.clause()).reference().number().equalsIgnoreCase(number);
    }

    private static Answer sameNumber(Finding finding, Reference asked) {
        Reference held = ((Clause.Numbered) finding.held().get(0).clause()).reference();
        if (!asked.edition().isEmpty() && !asked.edition().equals(held.edition())) {
            return finding.answer(ConformanceCode.OTHER_EDITION, Verdict.NOT_STATED);
        }
        boolean sameBut = isSame(asked.but(), held.but()) && isSame(asked.range(), held.range());
        return sameBut
                ? finding.meets(new Margin.None())
                : finding.answer(ConformanceCode.OTHER_WORDS, Verdict.NOT_STATED);
    }

    private static boolean isSame(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }

    /** Nothing is laid down of this; perhaps of what it is cut from. */
    private Answer silence(Stated asked, Predicate<Clause> which) {
        List<Stated> beyond = offer.beyond(asked.clause().quality(), which);
        return beyond.isEmpty()
                ? new Finding(asked, List.of()).answer(ConformanceCode.NOTHING_SAID, Verdict.NOT_STATED)
                : new Finding(asked, beyond.subList(0, 1))
                        .answer(ConformanceCode.OF_THE_WHOLE_ONLY, Verdict.NOT_STATED);
    }
}
