package dev.gambrel.references.gs1;

import java.util.regex.Pattern;

/** What a value looks like. Text is of the 82 characters that GS1 allows. */
public enum Form {
    /** A trade item. */
    GTIN("14 digits, the last a check digit", "[0-9]{14}", 14, true),
    /** A logistic unit. */
    SSCC("18 digits, the last a check digit", "[0-9]{18}", 18, true),
    /** A day. */
    DATE("6 digits YYMMDD", "[0-9]{6}", 6, true),
    /** A weight, whose decimals stand in the identifier. */
    MEASURE("6 digits", "[0-9]{6}", 6, true),
    /** Text. */
    TEXT_20("1 to 20 letters, digits and signs", Form.TEXT + "{1,20}", 20, false),
    /** Longer text. */
    TEXT_30("1 to 30 letters, digits and signs", Form.TEXT + "{1,30}", 30, false),
    /** How many. */
    COUNT("1 to 8 digits", "[0-9]{1,8}", 8, false),
    /** An amount of money, whose decimals stand in the identifier. */
    AMOUNT("1 to 15 digits", "[0-9]{1,15}", 15, false),
    /** A country by its number in ISO 3166-1. */
    COUNTRY("3 digits", "[0-9]{3}", 3, false),
    /** Up to five countries. */
    COUNTRIES("3 digits for each of 1 to 5 countries", "(?:[0-9]{3}){1,5}", 15, false),
    /** A day with hour and minute. */
    DATE_AND_TIME("10 digits YYMMDDhhmm", "[0-9]{6}(?:[01][0-9]|2[0-3])[0-5][0-9]", 10, false),
    /** One day, or the first and the last. */
    DATES("6 digits YYMMDD, or 12 for a first and a last day", "[0-9]{6}(?:[0-9]{6})?", 12, false),
    /** A day that needs a separator after it. */
    DATE_OPEN("6 digits YYMMDD", "[0-9]{6}", 6, false),
    /** A country and the approval number of a plant. */
    PROCESSOR(
            "3 digits of a country and 1 to 27 letters, digits and signs",
            "[0-9]{3}" + Form.TEXT + "{1,27}",
            30,
            false);

    private static final String TEXT = "[!-\"%-?A-Z_a-z]";

    private final String words;
    private final Pattern pattern;
    private final int longest;
    private final boolean predefined;

    Form(String words, String pattern, int longest, boolean predefined) {
        this.words = words;
        this.pattern = Pattern.compile(pattern);
        this.longest = longest;
        this.predefined = predefined;
    }

    /**
     * In print.
     *
     * @return for example "6 digits YYMMDD"
     */
    public String words() {
        return words;
    }

    /**
     * Whether a value has this form, leaving aside check digits and the calendar.
     *
     * @param value any text
     * @return true if so
     */
    public boolean fits(String value) {
        return value.length() <= longest && pattern.matcher(value).matches();
    }

    /**
     * The most characters.
     *
     * @return at least 1
     */
    public int longest() {
        return longest;
    }

    /**
     * Whether all values have the longest length, so that no separator is needed after one.
     *
     * @return true if so
     */
    public boolean isPredefined() {
        return predefined;
    }
}
