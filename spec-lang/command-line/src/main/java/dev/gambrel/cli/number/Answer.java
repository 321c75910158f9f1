package dev.gambrel.cli.number;

import dev.gambrel.cli.number.report.NumberReport;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import java.util.List;
import java.util.function.Function;

/**
 * What is printed of a number.
 *
 * @param reports the meaning; none where nothing is known
 * @param findings what was found on the way
 */
record Answer(List<NumberReport> reports, List<Diagnostic> findings) {
    static <T> Answer of(Result<T> result, Function<T, NumberReport> report) {
        return new Answer(result.value().map(report).stream().toList(), result.diagnostics());
    }
}
