package dev.gambrel.diagnostic;

import java.util.List;
import java.util.Optional;

/**
 * A value with what was found on the way to it, or only the findings.
 *
 * @param value present exactly when no finding is an error
 * @param diagnostics the findings, in the order in which they should be read
 * @param <T> what was asked for
 */
public record Result<T>(Optional<T> value, List<Diagnostic> diagnostics) {
    /**
     * Copies the findings.
     *
     * @throws IllegalArgumentException if there is a value beside an error, or neither
     */
    public Result {
        diagnostics = List.copyOf(diagnostics);
        if (value.isPresent() == hasError(diagnostics)) {
            throw new IllegalArgumentException("a result has a value or an error, and not both");
        }
    }

    /**
     * A value with warnings and notes, if any.
     *
     * @param value the value
     * @param diagnostics findings, none of them an error
     * @param <T> the kind of value
     * @return the result
     */
    public static <T> Result<T> of(T value, List<Diagnostic> diagnostics) {
        return new Result<>(Optional.of(value), diagnostics);
    }

    /**
     * No value.
     *
     * @param diagnostics findings, at least one of them an error
     * @param <T> the kind of value
     * @return the result
     */
    public static <T> Result<T> failed(List<Diagnostic> diagnostics) {
        return new Result<>(Optional.empty(), diagnostics);
    }

    /**
     * Whether any finding is an error.
     *
     * @param diagnostics findings
     * @return true if one is
     */
    public static boolean hasError(List<Diagnostic> diagnostics) {
        for (Diagnostic diagnostic : diagnostics) {
            if (diagnostic.severity() == Severity.ERROR) {
                return true;
            }
        }
        return false;
    }

    /**
     * The value, for a caller who is sure of it.
     *
     * @return the value
     * @throws IllegalStateException with the first error's sentence if there is none
     */
    public T orElseThrow() {
        return value.orElseThrow(() -> new IllegalStateException(diagnostics.stream()
                .filter(d -> d.severity() == Severity.ERROR)
                .findFirst()
                .orElseThrow()
                .message()));
    }
}
