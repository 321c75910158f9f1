package dev.gambrel.diagnostic;

import dev.gambrel.text.Position;
import dev.gambrel.text.SourceText;
import java.util.List;

/**
 * Findings as lines of text for people: where, what, the underlined words, and what to do.
 *
 * <p>Control and direction characters of the text are shown escaped, so that a file cannot steer a terminal.
 */
public final class PlainReport {
    private static final int MARGIN = 2;

    private final Paint paint;

    /**
     * A report.
     *
     * @param paint with which to mark words, or {@link Paint#NONE}
     */
    public PlainReport(Paint paint) {
        this.paint = paint;
    }

    /**
     * All findings up to a limit, with a count of the rest.
     *
     * @param findings in the order in which they shall be read
     * @param most how many are shown
     * @return lines ending in a line feed; empty if there are no findings
     */
    public String print(List<Diagnostic> findings, int most) {
        StringBuilder out = new StringBuilder();
        for (Diagnostic finding : findings.subList(0, Math.min(most, findings.size()))) {
            out.append(print(finding)).append('\n');
        }
        int more = findings.size() - most;
        if (more > 0) {
            out.append("and ").append(more).append(more == 1 ? " more finding.\n\n" : " more findings.\n\n");
        }
        return out.toString();
    }

    /**
     * One finding.
     *
     * @param finding the finding
     * @return lines ending in a line feed
     */
    public String print(Diagnostic finding) {
        StringBuilder out = new StringBuilder();
        String kind = finding.severity().word() + " " + finding.code().id();
        out.append(paint.mark(finding.severity(), kind))
                .append(" (")
                .append(finding.code().slug())
                .append(")");
        out.append(where(finding.place())).append('\n');
        indent(out, Visible.text(finding.message()));
        excerpt(out, finding.place(), '^', finding.severity());
        for (Label label : finding.related()) {
            indent(out, Visible.text(label.words()) + where(label.place()) + ":");
            excerpt(out, label.place(), '-', Severity.NOTE);
        }
        finding.notes().forEach(note -> indent(out, note));
        finding.help().forEach(help -> indent(out, "→ " + Visible.text(help)));
        return out.toString();
    }

    private static void indent(StringBuilder out, String text) {
        for (String line : text.split("\n", -1)) {
            out.append(" ".repeat(MARGIN)).append(Visible.text(line)).append('\n');
        }
    }

    private static String where(Place place) {
        if (place instanceof Place.Written written) {
            return where(written.text()) + ", "
                    + Visible.text(written.tree().path().toString());
        } else if (place instanceof Place.InText in) {
            Position position = in.text().position(in.span().start());
            return " in " + Visible.text(in.text().name()) + ", line " + position.line();
        } else if (place instanceof Place.InTree tree) {
            return " at " + Visible.text(tree.path().toString());
        }
        return " in " + Visible.text(((Place.InFile) place).name());
    }

    private void excerpt(StringBuilder out, Place place, char mark, Severity severity) {
        if (place instanceof Place.Written written) {
            excerpt(out, written.text(), mark, severity);
        } else if (place instanceof Place.InText in) {
            SourceText text = in.text();
            int line = text.position(in.span().start()).line();
            String number = Integer.toString(line);
            Underline underline = Underline.of(text, line, in.span(), mark);
            out.append(" ".repeat(MARGIN * 2))
                    .append(number)
                    .append(" | ")
                    .append(underline.line())
                    .append('\n');
            out.append(" ".repeat(MARGIN * 2 + number.length())).append(" | ");
            out.append(underline.indent())
                    .append(paint.mark(severity, underline.marks()))
                    .append('\n');
        }
    }

    /** How words are marked on a terminal. */
    public enum Paint {
        /** Not at all. */
        NONE,
        /** With the colours of ANSI terminals (ECMA-48, select graphic rendition). */
        ANSI;

        String mark(Severity severity, String text) {
            if (this == NONE || text.isEmpty()) {
                return text;
            }
            String colour =
                    switch (severity) {
                        case ERROR -> "31";
                        case WARNING -> "33";
                        case NOTE -> "36";
                    };
            return "\u001b[1;" + colour + "m" + text + "\u001b[0m";
        }
    }
}
