package dev.gambrel.batches.sheets;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about a weigh sheet: of its heading up to G2410, of one row after that. */
public enum SheetCode implements Code {
    /** A sheet without its table. */
    NO_TABLE("G2401", "no-table-of-parts", "No row names the columns: it begins with “part”."),
    /** A first word that no heading has. */
    UNKNOWN_LINE("G2402", "unknown-heading-line", "“{word}” is no line of the heading of a weigh sheet."),
    /** Something that the heading must say. */
    LINE_MISSING("G2403", "heading-line-missing", "The heading does not say {what}."),
    /** A line of the heading that stands twice. */
    LINE_TWICE("G2404", "heading-line-twice", "The heading says {what} twice."),
    /** A value of the heading that cannot be read. */
    LINE_UNREADABLE("G2405", "heading-value", "The {line} is “{value}”; {wanted} is wanted."),
    /** A sheet of another specification. */
    OTHER_SPECIFICATION("G2406", "other-specification", "The sheet is of “{found}”; the specification is “{wanted}”."),
    /** A sheet of another revision. */
    OTHER_REVISION(
            "G2407", "other-revision", "The sheet is of revision {found}; the specification is revision {wanted}."),
    /** A column that must be there. */
    NO_COLUMN("G2408", "no-column-in-sheet", "No column is headed {column}."),
    /** Two columns of one name. */
    COLUMN_TWICE("G2409", "two-columns-alike", "Two columns are headed {column}."),
    /** A column that is not read. */
    COLUMN_NOT_READ("G2410", "column-not-read", Severity.WARNING, "The column “{column}” is not read."),
    /** More or fewer cells than there are columns. */
    CELLS("G2411", "cells-of-row", "The table has {wanted} columns, and the row has {found} cells."),
    /** Quotation marks that do not fit. */
    QUOTES(
            "G2412",
            "quotation-marks-of-row",
            "A quotation mark is not closed in its row, or something stands after it."),
    /** A part that the specification does not have. */
    PART_UNKNOWN("G2413", "part-not-in-specification", "The specification has no part “{part}”."),
    /** A name that several parts have. */
    PART_UNCLEAR("G2414", "part-unclear", "“{part}” may be {count} parts of the specification."),
    /** A part that is weighed twice. */
    PART_TWICE("G2415", "part-weighed-twice", "{part} has two rows."),
    /** A word that does not tell how many pieces were weighed. */
    PIECES_UNKNOWN(
            "G2416", "pieces-unknown", "The pieces are “{pieces}”; pair, single, side, all or a number is wanted."),
    /** More pieces than there are. */
    NOT_SO_MANY("G2417", "not-so-many-pieces", "Of {part} {found} pieces were weighed; the carcass has {most}."),
    /** A weight of some pieces that stands for all. */
    SCALED_UP(
            "G2418",
            "weighed-in-part",
            Severity.WARNING,
            "Of {part} only {weighed} was weighed: the weight is taken {factor} times."),
    /** A cell with nothing in it. */
    EMPTY("G2420", "weight-not-given", "The {column} is empty."),
    /** Something that is no figure. */
    NOT_A_FIGURE("G2421", "no-figure-in-cell", "The {column} is “{value}”, which is no figure that can be read."),
    /** A figure that can be read in two ways. */
    UNCLEAR("G2422", "figure-read-two-ways", "The {column} is “{value}”: is it {one} or {other}?"),
    /** Less than nothing. */
    NEGATIVE("G2423", "less-than-nothing", "The {column} is “{value}”; a weight is 0 or more."),
    /** A gross weight that is less than its tare. */
    BELOW_TARE("G2424", "gross-below-tare", "The gross weight {gross} is less than the tare {tare}."),
    /** No unit. */
    NO_UNIT("G2425", "unit-not-given", "The row does not say in what unit it was weighed."),
    /** A unit that is none, or measures something else. */
    OTHER_UNIT("G2426", "unit-of-weight", "“{unit}” is no unit of weight."),
    /** A figure that fits in pounds and not in kilograms. */
    PERHAPS_POUNDS(
            "G2427",
            "perhaps-pounds",
            Severity.WARNING,
            "{part} weighs {found}, and {expected} is expected. Was it {pounds}?"),
    /** A scale that the heading does not have. */
    OTHER_SCALE("G2428", "scale-not-in-heading", "The heading has no scale “{scale}”."),
    /** Several scales and none named. */
    NO_SCALE("G2429", "scale-not-said", "{what} was weighed on one of {count} scales, and which is not said."),
    /** A number of weighings that is none. */
    WEIGHINGS("G2430", "number-of-weighings", "The weighings are “{value}”; a whole number from 1 to 999 is wanted."),
    /** A table without a row. */
    NOTHING_WEIGHED("G2431", "nothing-weighed", "The table has no row: no part was weighed.");

    private final Kind kind;

    SheetCode(String id, String slug, String pattern) {
        this(id, slug, Severity.ERROR, pattern);
    }

    SheetCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
