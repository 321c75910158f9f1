package dev.gambrel.diagnostic;

/** Makes characters that a terminal would obey, or that hide, visible as their number. */
public final class Visible {
    private Visible() {}

    /**
     * A text in which no character steers anything.
     *
     * @param text any text of one line
     * @return the same, with control, format, private and unpaired characters and what is none written as {@code \\u{202E}}
     */
    public static String text(String text) {
        if (text.codePoints().noneMatch(Visible::isHidden)) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            if (isHidden(c)) {
                out.append("\\u{")
                        .append(Integer.toHexString(c).toUpperCase(java.util.Locale.ROOT))
                        .append('}');
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /**
     * Whether a character steers a terminal, hides, or cannot be printed.
     *
     * @param codePoint any Unicode code point
     * @return true for control, format, private and unpaired characters, what is no character, and separators of lines and paragraphs
     */
    public static boolean isHidden(int codePoint) {
        if (codePoint >= ' ' && codePoint < 0x7f) {
            return false;
        }
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.PRIVATE_USE,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> isNoCharacter(codePoint);
        };
    }

    /** The last two of each plane will never be characters, and no XML may hold U+FFFE or U+FFFF. */
    private static boolean isNoCharacter(int codePoint) {
        return (codePoint & 0xfffe) == 0xfffe;
    }
}
