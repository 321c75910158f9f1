package dev.gambrel.batches;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about a file of carcasses. All are errors, of the file up to G1709, of one row after that. */
public enum BatchCode implements Code {
    /** A file without a heading. */
    NO_HEADING("G1701", "no-heading", "The file has no heading: its first row must name its columns."),
    /** No column of carcass weights. */
    NO_WEIGHT("G1702", "no-weight-column", "No column is headed with a carcass weight and what was weighed."),
    /** Two columns of one name. */
    COLUMN_TWICE("G1703", "column-twice", "Two columns are headed {column}."),
    /** A unit that does not measure what the column does. */
    COLUMN_UNIT("G1704", "column-unit", "The column {column} is headed in {unit}; {wanted} is wanted."),
    /** A column that was asked for and is not there. */
    NO_COLUMN("G1705", "no-such-column", "No column is headed {column}."),
    /** A heading that is too long or cannot be read. */
    HEADING_UNREADABLE(
            "G1706",
            "heading-unreadable",
            "The heading cannot be read: at most {characters} characters in {columns} columns are taken, and every quotation"
                    + " mark must be closed."),
    /** More or fewer cells than the heading has. */
    CELLS("G1710", "number-of-cells", "The heading has {wanted} cells, and the row has {found}."),
    /** Quotation marks that do not fit. */
    QUOTES(
            "G1711",
            "quotation-marks",
            "A quotation mark is not closed in its row, or something stands after the closed one."),
    /** A row that is too long. */
    ROW_TOO_LONG("G1712", "row-too-long", "The row is longer than {allowed} characters."),
    /** Characters that are none. */
    CHARACTERS("G1713", "unreadable-characters", "The {column} holds characters that are not UTF-8."),
    /** Nothing where a weight should be. */
    NO_WEIGHT_GIVEN("G1714", "weight-empty", "The {column} is empty."),
    /** No number. */
    NOT_A_FIGURE("G1715", "not-a-figure", "The {column} is “{value}”, which is no figure that can be read."),
    /** A number that can be read in two ways. */
    UNCLEAR(
            "G1716",
            "unclear-figure",
            "The {column} is “{value}”, which may be over a thousand or not: the comma may stand"
                    + " before the decimals."),
    /** A figure without a unit. */
    NO_UNIT("G1717", "no-unit", "The {column} is “{value}”, and neither the row nor the heading says in what unit."),
    /** A unit that does not measure what the column does. */
    OTHER_UNIT("G1718", "other-unit", "The {column} is “{value}”; {wanted} is wanted."),
    /** A word that is not among those allowed. */
    OTHER_WORD("G1719", "other-word", "The {column} is “{value}”; it can be {wanted}.");

    private final Kind kind;

    BatchCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
