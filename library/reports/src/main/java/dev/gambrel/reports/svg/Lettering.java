package dev.gambrel.reports.svg;

/** How words are set. */
public enum Lettering {
    /** Names and figures. */
    PLAIN(11, false, Ink.BLACK),
    /** What must be seen first. */
    STRONG(11, true, Ink.BLACK),
    /** What chance does not explain. */
    SIGNAL(11, true, Ink.RUST),
    /** Headings and what stands beside the matter. */
    SMALL(9.5, false, Ink.GREY);

    private static final double BOLD = 1.13;

    private final double size;
    private final boolean isBold;
    private final Ink ink;

    Lettering(double size, boolean isBold, Ink ink) {
        this.size = size;
        this.isBold = isBold;
        this.ink = ink;
    }

    /**
     * Its height.
     *
     * @return the size of the font
     */
    public double size() {
        return size;
    }

    /**
     * Whether it is bold.
     *
     * @return true if it is
     */
    public boolean isBold() {
        return isBold;
    }

    /**
     * Its colour.
     *
     * @return the ink
     */
    public Ink ink() {
        return ink;
    }

    /**
     * How wide a text is at most, in whatever font without serifs it is set.
     *
     * @param text any text of one line
     * @return an estimate on the wide side
     */
    public double width(String text) {
        return text.codePoints().mapToDouble(Lettering::em).sum() * size * (isBold ? BOLD : 1);
    }

    /** Widths of the widest common fonts, as a part of their size. */
    private static double em(int c) {
        if (" ijlI.,:;'|!`".indexOf(c) >= 0) {
            return 0.36;
        } else if ("ft()[]{}/\\-r\"".indexOf(c) >= 0) {
            return 0.47;
        } else if (c < 0x80) {
            return "mwMW@%".indexOf(c) >= 0 ? 1 : c >= 'a' && c <= 'z' || c >= '0' && c <= '9' ? 0.645 : 0.84;
        }
        return isKnown(c) ? 0.84 : 1.1;
    }

    /** Letters of Europe, and the signs that we ourselves write. Of any other the width is not known. */
    static boolean isKnown(int c) {
        return c >= ' ' && c < 0x180 || "“”‘’–…±²×→".indexOf(c) >= 0;
    }
}
