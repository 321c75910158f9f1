package dev.gambrel.reports.svg;

/** The few colours. Each is of another lightness, so that none is needed to tell things apart in print without colours. */
public enum Ink {
    /** Nothing is drawn. */
    NONE("none"),
    /** Paper. */
    WHITE("#ffffff"),
    /** Words and marks: on white 17 to 1. */
    BLACK("#1c1c1c"),
    /** Words beside the matter: on white 7 to 1. */
    GREY("#555555"),
    /** Lines that lead the eye. */
    PALE("#b4b4b4"),
    /** What was expected. */
    SAND("#e9e2d0"),
    /** What came out: on white 9 to 1. */
    BLUE("#1d4676"),
    /** What chance does not explain: on white 7 to 1. */
    RUST("#8f2d0e");

    private final String code;

    Ink(String code) {
        this.code = code;
    }

    /**
     * The colour.
     *
     * @return as SVG writes it
     */
    public String code() {
        return code;
    }
}
