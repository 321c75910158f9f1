package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.diagnostic.Diagnostic;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/**
 * Reports characters that no word of the language holds and quotations that are never closed, each line once, and
 * hides the characters from the parser. Gives the lines, of which no more need be said.
 */
final class StrayTokens {
    private StrayTokens() {}

    static Set<Integer> report(List<? extends Token> tokens, Offsets offsets, FileReport report) {
        Set<Integer> lines = new HashSet<>();
        for (Token token : tokens) {
            if (token.getType() == GambrelLexer.STRAY) {
                ((CommonToken) token).setChannel(Token.HIDDEN_CHANNEL);
                if (lines.add(report.lineOf(offsets.of(token)))) {
                    report.add(stray(token, offsets, report));
                }
            } else if (token.getType() == GambrelLexer.OPEN_STRING) {
                ((CommonToken) token).setType(GambrelLexer.STRING);
                report.add(report.finding(SyntaxCode.OPEN_QUOTE, offsets.of(token))
                        .help("Close it with \" before the end of the line."));
            }
        }
        return lines;
    }

    static Diagnostic stray(Token token, Offsets offsets, FileReport report) {
        String text = token.getText();
        var finding =
                report.finding(SyntaxCode.STRAY_CHARACTER, offsets.of(token)).with("found", shown(text));
        return switch (text) {
            case "½", "¼", "¾" -> finding.help("Write the fraction with a slash, such as 1/2 in.");
            case "“", "”", "„", "'", "‘" ->
                finding.help("Quotations are written with straight double marks: \"like this\".");
            case "#", ";" ->
                finding.help("Lines end by themselves, and a comment begins with two slashes: // like this");
            case "=", ":" -> finding.help("Leave it out: a name and its figure stand side by side.");
            case "~" -> finding.help("Write the spread out: 15 % ± 0.8 %");
            default -> finding.help("Leave it out, or put the name that holds it in quotation marks.");
        };
    }

    private static String shown(String text) {
        int codePoint = text.codePointAt(0);
        boolean visible = codePoint > ' '
                && Character.getType(codePoint) != Character.FORMAT
                && Character.getType(codePoint) != Character.CONTROL;
        return visible ? "“" + text + "”" : String.format(Locale.ROOT, "U+%04X", codePoint);
    }
}
