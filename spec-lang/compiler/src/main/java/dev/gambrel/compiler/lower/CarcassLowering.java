package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.meaning.Citations;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.estimate.Predictors;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The carcass line, and the steps that lead to it from other bases. */
final class CarcassLowering {
    private static final List<TradeName> BASES = List.of(
            TradeName.of("live"),
            TradeName.of("in skin"),
            TradeName.of("warm"),
            TradeName.of("cold"),
            TradeName.of("hot"),
            TradeName.of("chilled"),
            TradeName.of("larder"));

    private CarcassLowering() {}

    static Carcass carcass(Located located, List<BasisStep> steps, List<Grade> grades, Predictors predictors) {
        Clauses clauses = new Clauses(located);
        FileReport report = located.report();
        Basis basis = clauses.one(Clause.Basis.class, "on what basis it is weighed")
                .flatMap(written -> basis(written, report))
                .orElse(Basis.COLD);
        List<String> dressing = clauses.all(Clause.Words.class).stream()
                .map(Clause.Words::words)
                .toList();
        WeightBand band = clauses.one(Clause.Figures.class, "what the carcass weighs")
                .flatMap(figure -> band(figure, report))
                .orElse(new WeightBand.NotStated());
        clauses.finish();
        return new Carcass(basis, dressing, band, steps, grades, predictors);
    }

    private static Optional<WeightBand> band(Clause.Figures written, FileReport report) {
        Figure figure = written.figure();
        FigureReader figures = new FigureReader(report);
        if (figure.more() instanceof Figure.More.UpTo more) {
            return figures.both(figure.amount(), more.amount(), Dimension.WEIGHT)
                    .map(ends -> new WeightBand.Stated(ends.get(0), ends.get(1)));
        }
        report.add(report.finding(MeaningCode.NOT_A_BAND, written.span())
                .help("Write the lightest and the heaviest carcass that the shares hold for: 20 kg to 24 kg."));
        return Optional.empty();
    }

    private static Optional<Basis> basis(Clause.Basis written, FileReport report) {
        Optional<Basis> basis = Basis.of(written.words());
        if (basis.isEmpty()) {
            var finding =
                    report.finding(MeaningCode.UNKNOWN_BASIS, written.span()).with("basis", written.words());
            report.add(NearestName.of(written.words(), BASES)
                    .map(near -> report.didYouMean(finding, written.span(), near))
                    .orElse(finding.help("A weight is live, in skin, warm or cold.")));
        }
        return basis;
    }

    /** The steps that can be read, each beside its line. */
    static List<BasisStep> steps(List<Located> lines, List<Located> kept) {
        List<BasisStep> steps = new ArrayList<>();
        for (Located line : lines) {
            step(line).ifPresent(step -> {
                steps.add(step);
                kept.add(line);
            });
        }
        return steps;
    }

    private static Optional<BasisStep> step(Located located) {
        Clauses clauses = new Clauses(located);
        FileReport report = located.report();
        List<Clause.Basis> written = clauses.all(Clause.Basis.class);
        Optional<Clause.Loss> loss = clauses.required(
                Clause.Loss.class, "what is lost", "Name the loss and write how much: loss chill shrink 2 % ± 0.4 %");
        Optional<Clause.Hanging> hanging = clauses.one(Clause.Hanging.class, "what is lost day by day");
        List<TradeName> sources = Citations.take(clauses);
        clauses.finish();
        if (written.size() < 2) {
            return Optional.empty();
        }
        Optional<Basis> from = basis(written.get(0), report);
        Optional<Basis> to = basis(written.get(1), report);
        Optional<Expected> share = loss.flatMap(clause -> share(clause, report));
        if (from.isEmpty() || to.isEmpty() || share.isEmpty()) {
            return Optional.empty();
        }
        if (from.get().compareTo(to.get()) >= 0) {
            report.add(report.finding(MeaningCode.BACKWARD_STEP, written.get(1).span())
                    .with("from", from.get().words())
                    .with("to", to.get().words())
                    .help("The order is live, in skin, warm, cold."));
            return Optional.empty();
        }
        BasisStep.Hanging daily =
                hanging.flatMap(clause -> daily(clause, report)).orElse(new BasisStep.Hanging.NotStated());
        return Optional.of(new BasisStep(from.get(), to.get(), loss.get().name().text(), share.get(), daily, sources));
    }

    private static Optional<BasisStep.Hanging> daily(Clause.Hanging written, FileReport report) {
        FigureReader figures = new FigureReader(report);
        Optional<Expected> perDay = figures.expected(written.perDay(), Dimension.SHARE);
        return figures.quantity(written.time(), Dimension.TIME)
                .flatMap(time -> days(time, written, report))
                .flatMap(days -> perDay.map(share -> new BasisStep.Hanging.Daily(share, days)));
    }

    private static Optional<Integer> days(Quantity time, Clause.Hanging written, FileReport report) {
        int most = BasisStep.Hanging.MOST_DAYS;
        BigDecimal days = time.amount();
        boolean whole = time.unit() == Unit.DAY && days.stripTrailingZeros().scale() <= 0;
        if (whole && days.signum() > 0 && days.compareTo(BigDecimal.valueOf(most)) <= 0) {
            return Optional.of(days.intValueExact());
        }
        report.add(report.finding(MeaningCode.NOT_DAYS, written.time().span())
                .with("found", time)
                .with("most", most)
                .help("Write how many whole days it hangs: then 0.3 % a day for 7 days"));
        return Optional.empty();
    }

    private static Optional<Expected> share(Clause.Loss loss, FileReport report) {
        if (loss.figure().isEmpty()) {
            report.add(report.finding(MeaningCode.MISSING_CLAUSE, loss.span())
                    .with("line", "from")
                    .with("what", "how much is lost")
                    .help("Write the share of the earlier weight after the name: loss chill shrink 2 % ± 0.4 %"));
            return Optional.empty();
        }
        return new FigureReader(report).expected(loss.figure().get(0), Dimension.SHARE);
    }
}
