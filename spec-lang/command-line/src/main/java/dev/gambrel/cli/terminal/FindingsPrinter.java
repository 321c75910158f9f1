package dev.gambrel.cli.terminal;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.PlainReport;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.allowance.AllowedWarning;
import java.io.PrintStream;
import java.util.List;

/** Prints findings as text. */
public final class FindingsPrinter {
    private FindingsPrinter() {}

    /**
     * Prints findings.
     *
     * @param findings in the order in which they shall stand
     * @param to where to print
     * @param colour whether words may be marked with colour
     * @param all whether to print all, however many
     */
    public static void print(List<Diagnostic> findings, PrintStream to, boolean colour, boolean all) {
        PlainReport report = new PlainReport(colour ? PlainReport.Paint.ANSI : PlainReport.Paint.NONE);
        to.print(report.print(findings, all ? Integer.MAX_VALUE : Limits.DEFAULT.shown()));
    }

    /**
     * Prints what is allowed, each with its reason.
     *
     * @param allowed in the order in which it shall stand; nothing is printed where there is none
     * @param to where to print
     * @param colour whether words may be marked with colour
     * @param all whether to print all, however many
     */
    public static void printAllowed(List<AllowedWarning> allowed, PrintStream to, boolean colour, boolean all) {
        if (!allowed.isEmpty()) {
            to.println("Allowed with a reason:\n");
            List<Diagnostic> findings =
                    allowed.stream().map(FindingsPrinter::withReason).toList();
            print(findings, to, colour, all);
        }
    }

    /** What to do about it has been done. */
    private static Diagnostic withReason(AllowedWarning warning) {
        Diagnostic found = warning.finding();
        return new Diagnostic(
                        found.code(),
                        found.arguments(),
                        found.place(),
                        found.related(),
                        found.notes(),
                        List.of(),
                        List.of())
                .note("Allowed, since: " + warning.allowance().reason());
    }

    /**
     * How many findings there are of each severity.
     *
     * @param findings what was found
     * @return "2 errors, 1 warning", or "none"
     */
    public static String count(List<Diagnostic> findings) {
        StringBuilder out = new StringBuilder();
        for (Severity severity : Severity.values()) {
            long count = findings.stream().filter(f -> f.severity() == severity).count();
            if (count > 0) {
                out.append(out.isEmpty() ? "" : ", ").append(count).append(' ').append(severity.word());
                out.append(count == 1 ? "" : "s");
            }
        }
        return out.isEmpty() ? "none" : out.toString();
    }
}
