package dev.gambrel.yields.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.ValidRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a carcass is one that an equation holds for. */
final class RangeCheck {
    private RangeCheck() {}

    static List<Diagnostic> of(Equation equation, Measurements given) {
        List<Diagnostic> found = new ArrayList<>();
        for (Equation.Held held : equation.held()) {
            ValidRange.Stated range = held.range();
            Optional<Reading> reading = given.reading(held.of());
            if (reading.isEmpty()) {
                found.add(Diagnostic.of(MeasurementCode.RANGE_NOT_CHECKED, ReadingCheck.PLACE)
                        .with("estimate", equation.name())
                        .with("measure", Measurements.plain(held.of()))
                        .with("low", range.low())
                        .with("high", range.high())
                        .help("Give it, or see to it that the carcass is such a one."));
            } else if (reading.get() instanceof Reading.Figure figure
                    && figure.value().dimension() == range.low().dimension()
                    && !range.holds(figure.value())) {
                found.add(ReadingCheck.outside(
                        Measurements.plain(held.of()), figure.value(), range, "the estimate " + equation.name()));
            }
        }
        return found;
    }
}
