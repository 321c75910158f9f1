package dev.gambrel.references.gs1;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.references.code.ReferenceCode;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.List;

/**
 * The number of a trade item, with a right check digit.
 *
 * @param digits 8, 12, 13 or 14 digits
 */
public record Gtin(String digits) {
    private static final String FORM = "[0-9]{8}|[0-9]{12,14}";
    private static final int LONGEST = 14;

    /**
     * Checks it.
     *
     * @throws IllegalArgumentException if it is of another length or its check digit is wrong
     */
    public Gtin {
        if (!digits.matches(FORM) || !CheckDigit.isRight(digits)) {
            throw new IllegalArgumentException("not a GTIN: " + digits);
        }
    }

    /**
     * Reads one.
     *
     * @param text a text that is nothing but the number
     * @return the number, or what is wrong with it
     */
    public static Result<Gtin> read(SourceText text) {
        Span all = new Span(0, text.text().length());
        if (!text.text().matches(FORM)) {
            return Result.failed(List.of(Diagnostic.of(ReferenceCode.NOT_A_GTIN, new Place.InText(text, all))
                    .with("written", Shown.shortened(text.text()))
                    .help("Write the digits as on the label, without blanks.")));
        }
        return CheckDigit.isRight(text.text())
                ? Result.of(new Gtin(text.text()), List.of())
                : Result.failed(List.of(wrongDigit(text, all)));
    }

    /** A number whose last digit is not what it should be. */
    static Diagnostic wrongDigit(SourceText text, Span span) {
        String number = text.slice(span);
        String before = number.substring(0, number.length() - 1);
        return Diagnostic.of(ReferenceCode.CHECK_DIGIT, new Place.InText(text, new Span(span.end() - 1, span.end())))
                .with("number", number)
                .with("found", number.substring(number.length() - 1))
                .with("wanted", CheckDigit.of(before))
                .help("Compare it with the label digit by digit: a digit was misread, or two changed places.");
    }

    /**
     * Filled up with zeros in front.
     *
     * @return 14 digits
     */
    public String fourteen() {
        return "0".repeat(LONGEST - digits.length()) + digits;
    }

    /**
     * Whether it is of an item of varying measure, such as meat sold by weight: 14 digits of which the first is 9.
     *
     * @return true if so
     */
    public boolean isVaryingMeasure() {
        return digits.length() == LONGEST && digits.charAt(0) == '9';
    }

    @Override
    public String toString() {
        return digits;
    }
}
