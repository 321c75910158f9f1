package dev.gambrel.batches;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A heading held against a specification.
 *
 * @param heading what stands in which column
 * @param weight the column of the carcass weight
 * @param grades the column of each grade of the specification; empty where there is none
 * @param readings the column of each reading that the specification knows; empty where there is none
 * @param carried the columns that are carried through
 * @param unused the names of the others
 */
record Sheet(
        Heading heading,
        Column weight,
        List<List<Column>> grades,
        List<List<Column>> readings,
        List<Integer> carried,
        List<String> unused) {
    static Result<Sheet> of(Heading heading, BatchPlan plan, Working working, BatchOrder order, String file) {
        return new Matching(heading, plan, new Place.InFile(file)).sheet(working, order);
    }

    /** Finds columns by their names. */
    private static final class Matching {
        private final Heading heading;
        private final BatchPlan plan;
        private final Place place;
        private final List<Diagnostic> found = new ArrayList<>();
        private final List<Integer> used = new ArrayList<>();

        Matching(Heading heading, BatchPlan plan, Place place) {
            this.heading = heading;
            this.plan = plan;
            this.place = place;
        }

        Result<Sheet> sheet(Working working, BatchOrder order) {
            used.add(heading.weight());
            Column weight = new Column(
                    heading.weight(),
                    heading.names().get(heading.weight()),
                    new Column.Kind.Figures(Dimension.WEIGHT, heading.units().get(heading.weight())));
            List<List<Column>> grades = plan.grades().stream()
                    .map(grade -> isGiven(grade, working)
                            ? List.<Column>of()
                            : column(grade.name(), new Column.Kind.Words(grade.values())))
                    .toList();
            List<List<Column>> readings = plan.readings().stream()
                    .map(name -> column(name, kind(name)))
                    .toList();
            List<Integer> carried = order.carried().stream()
                    .flatMap(name -> carried(name).stream())
                    .toList();
            List<String> unused = IntStream.range(0, heading.names().size())
                    .filter(c -> !used.contains(c))
                    .mapToObj(c -> heading.names().get(c))
                    .toList();
            return found.isEmpty()
                    ? Result.of(new Sheet(heading, weight, grades, readings, carried, unused), List.of())
                    : Result.failed(found);
        }

        private static boolean isGiven(Grade grade, Working working) {
            return working.grades().stream().anyMatch(given -> given.grade().equals(grade.name()));
        }

        private Column.Kind kind(TradeName reading) {
            for (Measure measure : plan.tree().carcass().predictors().measures()) {
                if (measure.name().equals(reading)) {
                    return measure.scale() instanceof Scale.Scored scored
                            ? new Column.Kind.Scores(
                                    scored.scores().stream()
                                            .map(Scale.Score::word)
                                            .toList(),
                                    scored.scores().stream()
                                            .map(Scale.Score::number)
                                            .toList())
                            : new Column.Kind.Figures(measure.scale().dimension(), List.of());
                }
            }
            return new Column.Kind.Figures(Dimension.WEIGHT, List.of());
        }

        private List<Column> column(TradeName name, Column.Kind kind) {
            List<Integer> columns = HeadingReader.columns(heading, name);
            if (columns.size() > 1) {
                found.add(HeadingReader.columnTwice(place, name));
                return List.of();
            }
            return columns.stream()
                    .map(c -> new Column(c, name.text(), headed(kind, c)))
                    .toList();
        }

        private Column.Kind headed(Column.Kind kind, int column) {
            used.add(column);
            if (!(kind instanceof Column.Kind.Figures figures)) {
                return kind;
            }
            List<Unit> units = heading.units().get(column);
            units.stream()
                    .filter(unit -> unit.dimension() != figures.dimension())
                    .forEach(unit -> found.add(
                            HeadingReader.unitDiffers(place, heading.names().get(column), unit, figures.dimension())));
            boolean isPlain = units.isEmpty() && figures.dimension() == Dimension.NUMBER;
            return new Column.Kind.Figures(figures.dimension(), isPlain ? List.of(Unit.NUMBER) : units);
        }

        private List<Integer> carried(TradeName name) {
            List<Integer> columns = HeadingReader.columns(heading, name);
            if (columns.isEmpty()) {
                found.add(Diagnostic.of(BatchCode.NO_COLUMN, place)
                        .with("column", name)
                        .help("The columns are: " + String.join(", ", heading.names()) + "."));
            }
            used.addAll(columns);
            return columns;
        }
    }
}
