package dev.gambrel.cli;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.PlainReport;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.allowance.AllowedWarning;
import java.io.PrintStream;
import java.util.List;

/** Prints findings as text. */
final class FindingsPrinter {
    private FindingsPrinter() {}

    static void print(List<Diagnostic> findings, PrintStream to, boolean colour, boolean all) {
        PlainReport report = new PlainReport(colour ? PlainReport.Paint.ANSI : PlainReport.Paint.NONE);
        to.print(report.print(findings, all ? Integer.MAX_VALUE : Limits.DEFAULT.shown()));
    }

    /** What is allowed, each with its reason. */
    static void printAllowed(List<AllowedWarning> allowed, PrintStream to, boolean colour, boolean all) {
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

    /** "2 errors, 1 warning", or "none". */
    static String count(List<Diagnostic> findings) {
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
