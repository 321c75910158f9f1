package dev.gambrel.fuzzing;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.FirstFindings;
import dev.gambrel.diagnostic.Fix;
import dev.gambrel.diagnostic.Label;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.PlainReport;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.List;
import java.util.stream.Stream;

/** What holds of findings whatever was read: they can be shown, they lie in their text, and there are not too many. */
final class FindingsHold {
    /** What is found in reading, and what is found in the meaning, with errors that come late kept beside the first. */
    private static final int MOST = 4 * FirstFindings.MOST;

    private FindingsHold() {}

    static void all(List<Diagnostic> findings) {
        Holds.isTrue(findings.size() <= MOST, () -> findings.size() + " findings are kept");
        findings.forEach(FindingsHold::one);
        PlainReport report = new PlainReport(PlainReport.Paint.NONE);
        printable(report.print(findings, FirstFindings.MOST));
    }

    private static void one(Diagnostic finding) {
        Stream.of(
                        Stream.of(finding.message()),
                        finding.notes().stream(),
                        finding.help().stream(),
                        finding.related().stream().map(Label::words))
                .flatMap(sentences -> sentences)
                .forEach(sentence ->
                        Holds.isTrue(!sentence.isBlank(), () -> finding.code().id() + " says nothing"));
        inText(finding.place());
        finding.related().forEach(label -> inText(label.place()));
        finding.fixes().stream().map(Fix::place).forEach(FindingsHold::inText);
    }

    private static void inText(Place place) {
        if (place instanceof Place.Written written) {
            inText(written.text());
        } else if (place instanceof Place.InText in) {
            within(in.text(), in.span());
        }
    }

    static void within(SourceText text, Span span) {
        Holds.isTrue(span.end() <= text.text().length(), () -> span + " lies past the end of " + text.name());
    }

    /** No character acts on a terminal or turns the direction of reading. */
    static void printable(String shown) {
        shown.codePoints()
                .filter(c -> c != '\n' && c != '\t')
                .filter(FindingsHold::acts)
                .findFirst()
                .ifPresent(c -> {
                    throw new AssertionError("printed as it is: U+" + Integer.toHexString(c));
                });
    }

    private static boolean acts(int c) {
        int type = Character.getType(c);
        boolean turns =
                c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069 || c == 0x200E || c == 0x200F || c == 0x61C;
        return type == Character.CONTROL || turns;
    }
}
