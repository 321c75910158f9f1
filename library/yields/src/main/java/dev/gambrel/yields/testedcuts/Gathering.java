package dev.gambrel.yields.testedcuts;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.houseshares.CutTests;
import dev.gambrel.yields.houseshares.CuttingTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The tests of one cut taken together, as far as they can be. */
final class Gathering {
    private final List<LeftOut> leftOut = new ArrayList<>();
    private final List<Taken> taken = new ArrayList<>();

    /** A test that tells all parts but some losses. */
    private record Taken(CutInTest cut, List<Integer> found, List<Integer> losses) {}

    private Gathering() {}

    static TestedCut of(TreePath path, List<CutInTest> tests) {
        Gathering gathering = new Gathering();
        tests.forEach(gathering::take);
        return gathering.taken.isEmpty() ? new TestedCut.NotFound(path, gathering.leftOut) : gathering.together(path);
    }

    private void take(CutInTest cut) {
        List<Integer> losses = cut.parts().stream()
                .filter(part -> cut.isLoss(part) && !cut.isWeighed(part))
                .toList();
        List<Integer> found =
                cut.parts().stream().filter(part -> !losses.contains(part)).toList();
        why(cut, found, losses).ifPresentOrElse(leftOut::add, () -> taken.add(new Taken(cut, found, losses)));
    }

    private Optional<LeftOut> why(CutInTest cut, List<Integer> found, List<Integer> losses) {
        String test = cut.test().name();
        List<Integer> open = Stream.concat(
                        found.stream().filter(part -> !cut.isKnown(part)),
                        losses.stream().filter(loss -> !cut.isStated(loss)))
                .toList();
        if (!open.isEmpty() || found.size() < 2) {
            return Optional.of(
                    new LeftOut.PartsNotKnown(test, open.stream().map(cut::name).toList(), found.size()));
        }
        if (!taken.isEmpty() && !names(cut).equals(names(taken.get(0).cut))) {
            return Optional.of(new LeftOut.OtherParts(test));
        }
        return Optional.empty();
    }

    private static List<TradeName> names(CutInTest cut) {
        return names(cut, cut.parts());
    }

    private static List<TradeName> names(CutInTest cut, List<Integer> parts) {
        return parts.stream().map(part -> TradeName.of(cut.name(part))).toList();
    }

    /** A loss counts as found where every test weighed it. */
    private TestedCut together(TreePath path) {
        List<Integer> places = new ArrayList<>();
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < taken.get(0).cut.parts().size(); i++) {
            int at = i;
            boolean isKept = taken.stream()
                    .anyMatch(test -> test.losses.contains(test.cut.parts().get(at)));
            (isKept ? kept : places).add(i);
        }
        if (places.size() < 2) {
            taken.forEach(test ->
                    leftOut.add(new LeftOut.PartsNotKnown(test.cut.test().name(), List.of(), places.size())));
        } else {
            taken.forEach(test -> nothing(test.cut, lines(test.cut, places)).ifPresent(leftOut::add));
        }
        boolean isNothing = leftOut.stream().anyMatch(each -> each instanceof LeftOut.Nothing);
        return isNothing || places.size() < 2 ? new TestedCut.NotFound(path, leftOut) : found(path, places, kept);
    }

    private static Optional<LeftOut> nothing(CutInTest cut, List<Integer> parts) {
        return parts.stream()
                .filter(part -> !(cut.kilograms(part) > 0))
                .findFirst()
                .map(part -> new LeftOut.Nothing(cut.test().name(), cut.name(part), cut.kilograms(part)));
    }

    private TestedCut.Found found(TreePath path, List<Integer> places, List<Integer> kept) {
        CutInTest first = taken.get(0).cut;
        List<CuttingTest> tests = new ArrayList<>();
        List<Double> missing = new ArrayList<>();
        for (Taken test : taken) {
            List<Integer> lines = lines(test.cut, places);
            tests.add(new CuttingTest(test.cut.test().name(), test.cut.together(lines), 1));
            OptionalDouble share = kept.isEmpty() ? OptionalDouble.empty() : test.cut.missing(lines);
            share.ifPresent(missing::add);
        }
        return new TestedCut.Found(
                path,
                first.tested(lines(first, places)),
                first.tested(lines(first, kept)),
                new CutTests(names(first, lines(first, places)), tests),
                missing.size() == taken.size() ? missing : List.of(),
                leftOut);
    }

    private static List<Integer> lines(CutInTest cut, List<Integer> places) {
        return places.stream().map(cut.parts()::get).toList();
    }
}
