package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.portions.PortionWeight;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the house expects its pieces to weigh. */
final class PieceWeights {
    private final Map<TreePath, Estimate> aims = new HashMap<>();
    private final List<Of> carcasses;

    /**
     * What one carcass should give; of a cut that is trimmed, what is left of it, since that is what a buyer gets.
     *
     * @param carcass in words
     * @param rows each line by its path
     */
    private record Of(String carcass, Map<TreePath, YieldRow> rows) {
        static Of of(ExpectedYields yields) {
            Map<TreePath, YieldRow> rows = new HashMap<>();
            yields.rows().forEach(row -> rows.putIfAbsent(row.path(), row));
            yields.rows().stream().filter(row -> row.kind() == Kind.TRIMMED).forEach(row -> rows.put(row.path(), row));
            return new Of("a carcass of " + yields.given().mass(), rows);
        }

        Optional<Estimate> onePiece(TreePath path) {
            return Optional.ofNullable(rows.get(path)).flatMap(YieldRow::onePiece);
        }
    }

    PieceWeights(CutTree house, Question question) {
        Yields yields = Yields.of(house, question.working());
        this.carcasses = carcasses(house, question.carcasses())
                .flatMap(carcass -> yields.forCarcass(carcass).value().stream())
                .map(Of::of)
                .toList();
        collect(house.parts(), TreePath.ROOT);
    }

    private static Stream<CarcassWeight> carcasses(CutTree house, List<CarcassWeight> given) {
        if (given.isEmpty() && house.carcass().band() instanceof WeightBand.Stated band) {
            return Stream.of(band.low(), band.high())
                    .map(mass -> new CarcassWeight(mass, house.carcass().basis()));
        }
        return given.stream();
    }

    /** What the hand that cuts a portion aims at, with its spread. */
    private void collect(List<Part> parts, TreePath path) {
        for (Part part : parts) {
            if (part instanceof Cut || part instanceof Way) {
                Cut cut = part instanceof Way way ? way.work() : (Cut) part;
                TreePath at = path.then(cut.name());
                for (Portion portion : cut.portions()) {
                    portion.aim()
                            .targetWeight()
                            .ifPresent(target -> aims.put(at.then(portion.name()), Estimate.of(target)));
                }
                collect(cut.parts(), at);
            }
        }
    }

    /** Whether a weight is expected of it at all, with a spread or without. */
    boolean isExpected(Product product) {
        return aims.containsKey(product.path())
                || carcasses.stream().anyMatch(of -> of.onePiece(product.path()).isPresent());
    }

    /** How many pieces are expected inside a limit on their weight; nothing where no spread is stated. */
    List<Inside> inside(Product product, Limit limit) {
        Estimate aim = aims.get(product.path());
        if (aim != null) {
            return PortionWeight.of(aim).map(weight -> Inside.of("", weight, limit)).stream()
                    .toList();
        }
        List<Inside> inside = new ArrayList<>(carcasses.size());
        for (Of of : carcasses) {
            of.onePiece(product.path())
                    .flatMap(PortionWeight::of)
                    .ifPresent(weight -> inside.add(Inside.of(of.carcass(), weight, limit)));
        }
        return inside;
    }
}
