package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.internal.grammar.GambrelParser.NameContext;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;

/** Names, with or without quotation marks, and other words in quotation marks. */
final class NameConverter {
    private static final TradeName UNREADABLE = TradeName.of("unreadable name");

    private final Offsets offsets;
    private final FileReport report;

    NameConverter(Offsets offsets, FileReport report) {
        this.offsets = offsets;
        this.report = report;
    }

    Name name(NameContext context) {
        Span span = offsets.of(context);
        boolean quoted = context.getStart().getType() == GambrelLexer.STRING;
        String written = quoted ? unquoted(context.getStart().getText()) : slice(span);
        return name(written, span);
    }

    /** The words as written, one space between them: how wide a gap is, and of what, makes no difference. */
    String slice(Span span) {
        String written = report.slice(span);
        StringBuilder out = new StringBuilder(written.length());
        boolean gap = false;
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (!isBlank(c)) {
                out.append(gap ? " " : "").append(c);
            }
            gap = isBlank(c);
        }
        return out.toString();
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\u00A0';
    }

    Name name(String written, Span span) {
        if (TradeName.isAcceptable(written)) {
            return new Name(TradeName.of(written), span);
        }
        report.add(report.finding(SyntaxCode.BAD_NAME, span)
                .with("found", written.length() > 40 ? written.substring(0, 40) + "…" : written)
                .note("A name has at most " + TradeName.MAX_LENGTH + " characters and no slash in it.")
                .help("Choose a shorter or plainer name."));
        return new Name(UNREADABLE, span);
    }

    /** What stands between quotation marks; a backslash makes the next character plain. */
    static String unquoted(String quoted) {
        int end = quoted.length() > 1 && quoted.endsWith("\"") ? quoted.length() - 1 : quoted.length();
        String inner = quoted.substring(1, end);
        if (inner.indexOf('\\') < 0) {
            return inner;
        }
        StringBuilder out = new StringBuilder(inner.length());
        for (int i = 0; i < inner.length(); i++) {
            char c = inner.charAt(i);
            boolean escapes = c == '\\' && i + 1 < inner.length();
            out.append(escapes ? inner.charAt(++i) : c);
        }
        return out.toString();
    }
}
