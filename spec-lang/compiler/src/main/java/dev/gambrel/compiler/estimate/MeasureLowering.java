package dev.gambrel.compiler.estimate;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A measure line. */
final class MeasureLowering {
    private final Located located;
    private final FileReport report;
    private final Clauses clauses;

    private MeasureLowering(Located located) {
        this.located = located;
        this.report = located.report();
        this.clauses = new Clauses(located);
    }

    /** The measure; nothing, after a finding, if it cannot be read. */
    static Optional<Measure> measure(Located located) {
        return new MeasureLowering(located).measure();
    }

    private Optional<Measure> measure() {
        Optional<EstimateClause.InUnit> unit = clauses.one(EstimateClause.InUnit.class, "in which unit it is told");
        List<EstimateClause.Score> scores = clauses.all(EstimateClause.Score.class);
        Optional<Clause.Figures> range = clauses.one(Clause.Figures.class, "its range", MeasureLowering::isRange);
        String where = clauses.one(Clause.Text.class, "where it is taken")
                .map(Clause.Text::text)
                .orElse("");
        clauses.finish();
        if (located.line().damaged() || located.line().names().isEmpty()) {
            return Optional.empty();
        }
        if (unit.isEmpty() && scores.isEmpty() && range.isEmpty()) {
            report.add(report.finding(MeaningCode.MISSING_CLAUSE, located.line().head())
                    .with("line", "measure")
                    .with("what", "how it is told")
                    .help("Write its unit, in mm, or its scores, 1 = thin, 2 = average, or its range, 1 to 15."));
            return Optional.empty();
        }
        Optional<Scale> scale = scores.isEmpty() ? inUnit(unit, range) : scored(scores);
        return scale.flatMap(read -> range(range)
                .map(valid -> new Measure(located.line().names().get(0).text(), read, where, valid)));
    }

    /** A share of something is no range of readings. */
    private static boolean isRange(Clause.Figures figures) {
        return figures.figure().of().isEmpty() && figures.figure().more() instanceof Figure.More.UpTo;
    }

    /** The unit as written, or else that of the range. */
    private Optional<Scale> inUnit(Optional<EstimateClause.InUnit> unit, Optional<Clause.Figures> range) {
        AnyFigures any = new AnyFigures(report);
        return unit.map(written -> any.unit(written.unit(), written.span()))
                .orElseGet(() -> range.flatMap(figures -> any.range(figures.figure()))
                        .map(ends -> ends.low().unit()))
                .map(Scale.In::new);
    }

    private Optional<Scale> scored(List<EstimateClause.Score> written) {
        List<Scale.Score> scores = new ArrayList<>();
        for (EstimateClause.Score score : written) {
            new FigureReader(report)
                    .expected(score.number(), Dimension.NUMBER)
                    .ifPresent(number -> scores.add(new Scale.Score(score.word().text(), number.exactMean())));
        }
        return scores.size() == written.size() ? Optional.of(new Scale.Scored(scores)) : Optional.empty();
    }

    private Optional<ValidRange> range(Optional<Clause.Figures> written) {
        return written.isEmpty()
                ? Optional.of(new ValidRange.NotStated())
                : new AnyFigures(report).range(written.get().figure()).map(range -> range);
    }
}
