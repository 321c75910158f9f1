package dev.gambrel.cli.terminal;

import dev.gambrel.compiler.format.FormatCode;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.located.JsonCode;
import java.util.List;

/** How the program ends. */
public enum ExitStatus {
    /** All is well; there may be warnings. */
    FINE(0),
    /** Something is wrong with a specification or a weight. */
    FINDINGS(1),
    /** The program was called in a way that it does not know. */
    WRONG_USAGE(2),
    /** A file could not be read or written, or a limit was hit. */
    COULD_NOT(3),
    /** Two texts were compared: what the one asks is not failed, and not shown to be met. */
    NOT_SHOWN(4),
    /** Two texts were compared: what the one asks the other fails. */
    DOES_NOT_CONFORM(5);

    private static final String FILES_AND_LIMITS = "G01";

    private final int number;

    ExitStatus(int number) {
        this.number = number;
    }

    /**
     * The number that the caller sees.
     *
     * @return 0 to 5
     */
    public int number() {
        return number;
    }

    /**
     * How the program ends after some findings.
     *
     * @param findings what was found
     * @return fine if there is no error among them
     */
    public static ExitStatus of(List<Diagnostic> findings) {
        if (!Result.hasError(findings)) {
            return FINE;
        }
        return findings.stream().map(Diagnostic::code).anyMatch(ExitStatus::isOfFilesOrLimits) ? COULD_NOT : FINDINGS;
    }

    private static boolean isOfFilesOrLimits(Code code) {
        return code instanceof JsonCode json
                ? switch (json) {
                    case NOT_UTF8, FILE_TOO_LONG, NESTED_TOO_DEEP, TOO_MANY_PARTS, PAST_LIMIT -> true;
                    default -> false;
                }
                : code == FormatCode.TOO_LARGE || code.id().startsWith(FILES_AND_LIMITS);
    }

    /**
     * The graver of two: what could not be done counts most.
     *
     * @param other how something else ended
     * @return how both together ended
     */
    public ExitStatus and(ExitStatus other) {
        return other.number > number ? other : this;
    }
}
