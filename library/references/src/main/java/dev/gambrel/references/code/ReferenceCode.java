package dev.gambrel.references.code;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about published numbers and the codes that carry them. */
public enum ReferenceCode implements Code {
    /** Too many or too few characters. */
    MEAT_CODE_LENGTH(
            "G2001", "meat-code-length", Severity.ERROR, "A meat code has 20 digits, and this has {count} characters."),
    /** A letter, a blank, or a digit of another script. */
    NOT_A_DIGIT(
            "G2002",
            "meat-code-not-a-digit",
            Severity.ERROR,
            "Position {position} of the meat code is “{written}”, and only the digits 0 to 9 may stand there."),
    /** The first two digits are no species. */
    SPECIES_NOT_ASSIGNED(
            "G2003",
            "meat-code-species",
            Severity.ERROR,
            "Positions 1 and 2 say species {digits}, which is not in the list held here."),
    /** Something stands where nothing may. */
    UNUSED_DIGIT(
            "G2004",
            "meat-code-unused-digit",
            Severity.ERROR,
            "Position {position} is {digit}, and it is not used: 0 must stand there."),
    /** A digit that has no meaning. */
    VALUE_NOT_ASSIGNED(
            "G2005",
            "meat-code-value",
            Severity.ERROR,
            "Position {position}, {field}, is {digit}, which {animal} does not have."),
    /** The list of cuts does not have it. */
    CUT_NOT_HELD("G2006", "meat-code-cut", Severity.WARNING, "Cut {cut} is not among the {animal} cuts held here."),
    /** More than is ever read. */
    GS1_TOO_LONG(
            "G2011",
            "gs1-too-long",
            Severity.ERROR,
            "An element string of {count} characters is too long; {most} are read."),
    /** What kind of value follows cannot be told. */
    GS1_NO_IDENTIFIER(
            "G2012",
            "gs1-no-identifier",
            Severity.ERROR,
            "“{written}” does not begin with an application identifier known here."),
    /** A value of another form. */
    GS1_VALUE_FORM("G2013", "gs1-value", Severity.ERROR, "({identifier}) {title} is “{value}”, and it takes {form}."),
    /** A digit was misread or mistyped. */
    CHECK_DIGIT(
            "G2014",
            "check-digit",
            Severity.ERROR,
            "The check digit of {number} is {found}, and worked out it is {wanted}."),
    /** A date that no calendar has. */
    GS1_NO_SUCH_DAY(
            "G2015",
            "gs1-no-such-day",
            Severity.ERROR,
            "({identifier}) {title} is “{value}”, and there is no such day."),
    /** A value that says nothing without another. */
    GS1_ALONE("G2016", "gs1-stands-alone", Severity.ERROR, "({identifier}) {title} must stand with {partners}."),
    /** Two values that cannot both hold. */
    GS1_DISAGREES(
            "G2017",
            "gs1-disagrees",
            Severity.ERROR,
            "({identifier}) {title} says {value}, and ({other}) says {before}."),
    /** Two values that must not stand together. */
    GS1_EXCLUDED("G2018", "gs1-excluded", Severity.ERROR, "({identifier}) {title} must not stand with ({other})."),
    /** The same value twice. */
    GS1_REPEATED("G2019", "gs1-repeated", Severity.WARNING, "({identifier}) {title} stands twice and says the same."),
    /** Free text where a meat code is usual. */
    GS1_NOT_A_MEAT_CODE(
            "G2020",
            "gs1-not-a-meat-code",
            Severity.WARNING,
            "(7002) MEAT CUT is “{value}”, which is not a UNECE meat code."),
    /** An item sold by weight, without its weight. */
    GS1_NO_WEIGHT(
            "G2021",
            "gs1-no-weight",
            Severity.WARNING,
            "GTIN {number} begins with 9, an item of varying measure, and no net weight stands beside it."),
    /** A piece that is past its date before it was packed. */
    GS1_ORDER_OF_DATES(
            "G2022",
            "gs1-order-of-dates",
            Severity.WARNING,
            "({identifier}) {title} {value} is before ({other}) {before}."),
    /** Another length, or something else than digits. */
    NOT_A_GTIN("G2023", "not-a-gtin", Severity.ERROR, "“{written}” is not a GTIN: it has 8, 12, 13 or 14 digits."),
    /** A number that the tables do not have. */
    NUMBER_NOT_HELD(
            "G2031", "number-not-held", Severity.ERROR, "{scheme} {number} is not among the numbers held here."),
    /** The number is held from other editions only. */
    OTHER_EDITION("G2032", "other-edition", Severity.ERROR, "{scheme} {number} is not held from edition {edition}."),
    /** Nothing can be said of a piece's weight. */
    NO_RANGES_HELD(
            "G2033", "no-ranges-held", Severity.ERROR, "No published weight ranges are held for {scheme} {number}."),
    /** Lighter than the lightest or heavier than the heaviest. */
    IN_NO_RANGE("G2034", "in-no-range", Severity.ERROR, "A piece of {weight} is in none of the ranges of {item}."),
    /** Nobody looked them up in print. */
    RANGES_FROM_MEMORY("G2035", "ranges-from-memory", Severity.WARNING, "The weight ranges of {item} are from memory."),
    /** A letter that the table does not have. */
    NO_SUCH_RANGE("G2036", "no-such-range", Severity.ERROR, "{item} has no range {range}."),
    /** A piece of another range than the one asked for. */
    NOT_IN_RANGE(
            "G2037",
            "not-in-range",
            Severity.ERROR,
            "A piece of {weight} is not in range {range} of {item}, which is {limits}."),
    /** Editions print different things. */
    SEVERAL_MEANINGS(
            "G2038",
            "several-meanings",
            Severity.WARNING,
            "{scheme} {number} is printed in {count} ways; which is meant is not said.");

    private final Kind kind;

    ReferenceCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
