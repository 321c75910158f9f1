package dev.gambrel.references.gs1;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.references.code.ReferenceCode;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads element strings, with identifiers in brackets as people write them or raw as a scanner gives them. Linear in the length of the
 * text, which is limited.
 */
public final class ElementStrings {
    /** The longest text that is read; no bar code of a label holds as much. */
    public static final int LONGEST = 4_000;

    private static final Pattern BRACKETS = Pattern.compile("\\(([0-9]{2,4})\\)");
    /** What scanners put before the data to tell the kind of bar code; from memory. */
    private static final Pattern SYMBOLOGY = Pattern.compile("\\](?:C1|e0|d2|Q3|J1)");

    private final SourceText text;
    private final List<Diagnostic> findings = new ArrayList<>();
    private final List<Written> elements = new ArrayList<>();

    private ElementStrings(SourceText text) {
        this.text = text;
    }

    /**
     * Reads an element string.
     *
     * @param text a text that is nothing but the element string
     * @return its elements if each has the form of its identifier and they may stand together; else what is wrong
     */
    public static Result<ElementString> read(SourceText text) {
        return new ElementStrings(text).read();
    }

    private Result<ElementString> read() {
        String written = text.text();
        if (written.length() > LONGEST) {
            return Result.failed(List.of(Diagnostic.of(
                            ReferenceCode.GS1_TOO_LONG, new Place.InText(text, new Span(LONGEST, LONGEST + 1)))
                    .with("count", written.length())
                    .with("most", LONGEST)
                    .help("Hand over one label at a time.")));
        }
        if (written.startsWith("(")) {
            bracketed();
        } else {
            raw();
        }
        if (findings.isEmpty()) {
            findings.addAll(new ElementRules(text, elements).findings());
        }
        return Result.hasError(findings)
                ? Result.failed(findings)
                : Result.of(
                        new ElementString(
                                elements.stream().map(Written::element).toList()),
                        findings);
    }

    /** A value goes on to the next two to four digits in brackets; a lot that holds such is told apart in the raw form only. */
    private void bracketed() {
        Matcher brackets = BRACKETS.matcher(text.text());
        int from = 0;
        Optional<Identifier> open = Optional.empty();
        int valueFrom = 0;
        while (brackets.find()) {
            Optional<Identifier> found = Identifier.of(brackets.group(1));
            close(open, from, valueFrom, brackets.start());
            open = found;
            from = brackets.start();
            valueFrom = brackets.end();
            if (found.isEmpty()) {
                unknown(from, brackets.end());
            }
        }
        if (valueFrom == 0) {
            unknown(0, text.text().length());
        }
        close(open, from, valueFrom, text.text().length());
    }

    private void close(Optional<Identifier> open, int from, int valueFrom, int end) {
        open.ifPresent(identifier ->
                element(identifier, text.text().substring(from + 1, valueFrom - 1), from, new Span(valueFrom, end)));
    }

    private void raw() {
        String written = text.text();
        Matcher symbology = SYMBOLOGY.matcher(written);
        int at = symbology.lookingAt() ? symbology.end() : 0;
        if (at < written.length() && written.charAt(at) == ElementString.SEPARATOR) {
            at++;
        }
        if (at == written.length()) {
            unknown(0, at);
        }
        while (at < written.length()) {
            Optional<Identifier> identifier = identifierAt(at);
            if (identifier.isEmpty()) {
                unknown(at, Math.min(written.length(), at + 4));
                return;
            }
            at = rawElement(identifier.get(), at);
        }
    }

    private int rawElement(Identifier identifier, int from) {
        String written = text.text();
        int valueFrom = from + identifier.pattern().length();
        int furthest = identifier.form().isPredefined()
                ? Math.min(written.length(), valueFrom + identifier.form().longest())
                : written.length();
        int end = valueFrom;
        while (end < furthest && written.charAt(end) != ElementString.SEPARATOR) {
            end++;
        }
        element(identifier, written.substring(from, valueFrom), from, new Span(valueFrom, end));
        return end < written.length() && written.charAt(end) == ElementString.SEPARATOR ? end + 1 : end;
    }

    private Optional<Identifier> identifierAt(int at) {
        String written = text.text();
        for (int length = 2; length <= 4 && at + length <= written.length(); length++) {
            Optional<Identifier> found = Identifier.of(written.substring(at, at + length));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private void unknown(int from, int to) {
        findings.add(
                Diagnostic.of(ReferenceCode.GS1_NO_IDENTIFIER, new Place.InText(text, new Span(from, to)))
                        .with("written", Shown.shortened(text.slice(new Span(from, to))))
                        .help(
                                "Write identifiers in brackets, such as (01) and (3103); known are those on labels of meat.")
                        .help(
                                "In a raw string a value of no fixed length ends with the separator FNC1; look whether it was lost."));
    }

    private void element(Identifier identifier, String digits, int from, Span value) {
        String written = text.slice(value);
        if (!identifier.form().fits(written)) {
            findings.add(wrong(
                            ReferenceCode.GS1_VALUE_FORM,
                            identifier,
                            digits,
                            value.length() == 0 ? new Span(from, value.end()) : value,
                            written)
                    .with("form", identifier.form().words()));
            return;
        }
        Element element = new Element(identifier, digits, written);
        Form form = identifier.form();
        if ((form == Form.GTIN || form == Form.SSCC) && !CheckDigit.isRight(written)) {
            findings.add(Gtin.wrongDigit(text, value));
        } else if (!hasDays(form, written)) {
            findings.add(wrong(ReferenceCode.GS1_NO_SUCH_DAY, identifier, digits, value, written)
                    .help("Dates are YYMMDD: year, month, day; day 00 leaves the day open."));
        } else {
            elements.add(new Written(element, new Span(from, value.end()), value));
        }
    }

    private static boolean hasDays(Form form, String value) {
        return switch (form) {
            case DATE, DATE_OPEN, DATE_AND_TIME ->
                Gs1Date.of(value.substring(0, 6)).isPresent();
            case DATES ->
                Gs1Date.of(value.substring(0, 6)).isPresent()
                        && (value.length() == 6
                                || Gs1Date.of(value.substring(6)).isPresent());
            default -> true;
        };
    }

    private Diagnostic wrong(ReferenceCode code, Identifier identifier, String digits, Span place, String written) {
        return Diagnostic.of(code, new Place.InText(text, place))
                .with("identifier", digits)
                .with("title", identifier.title())
                .with("value", Shown.shortened(written));
    }
}
