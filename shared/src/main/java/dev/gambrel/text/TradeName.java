package dev.gambrel.text;

import java.text.Normalizer;
import java.util.Locale;

/**
 * A name as the trade writes it: several words, any case.
 *
 * <p>Two names are equal when they differ only in case, in Unicode form (NFKC) or in the width of the space
 * between words: {@code Best End of Neck} is {@code best  end of neck}.
 */
public final class TradeName implements Comparable<TradeName> {
    /** The longest name that is taken, in UTF-16 characters. */
    public static final int MAX_LENGTH = 128;

    private final String text;
    private final String key;

    private TradeName(String text) {
        this.text = text;
        this.key = fold(text);
    }

    /**
     * A name with the white space at its ends removed and runs of it made single.
     *
     * @param text the words
     * @return the name
     * @throws IllegalArgumentException if {@link #isAcceptable} says no
     */
    public static TradeName of(String text) {
        if (!isAcceptable(text)) {
            throw new IllegalArgumentException("not a name: " + text.length() + " characters");
        }
        return new TradeName(singleSpaced(text));
    }

    /**
     * A name of what is left of another, such as without its article; what is left may be nothing, or too long with what is put to it.
     *
     * @param text the words
     * @param otherwise the name where {@link #isAcceptable} says no
     * @return the name
     */
    public static TradeName of(String text, TradeName otherwise) {
        return isAcceptable(text) ? of(text) : otherwise;
    }

    /**
     * Whether two texts name the same; texts that can be no names are the same when their characters are.
     *
     * @param one a text from anywhere
     * @param other another
     * @return true if they are equal as names
     */
    public static boolean areSame(String one, String other) {
        return one.equals(other) || isAcceptable(one) && isAcceptable(other) && of(one).equals(of(other));
    }

    /**
     * Whether a text can be a name: 1 to {@value #MAX_LENGTH} characters, not blank, without control or direction
     * characters, and without the slash that separates the names of a path.
     *
     * @param text a text from anywhere
     * @return true if {@link #of} takes it
     */
    public static boolean isAcceptable(String text) {
        if (text.length() > MAX_LENGTH) {
            return false;
        }
        boolean blank = true;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int c = text.codePointAt(i);
            if (c == '/' || isUnprintable(c)) {
                return false;
            }
            blank = blank && isBlank(c);
        }
        return !blank;
    }

    private static boolean isBlank(int codePoint) {
        return Character.isWhitespace(codePoint) || Character.isSpaceChar(codePoint);
    }

    private static boolean isUnprintable(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE -> true;
            default -> false;
        };
    }

    private static String singleSpaced(String text) {
        StringBuilder out = new StringBuilder(text.length());
        boolean gap = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isBlank(c)) {
                gap = !out.isEmpty();
            } else {
                if (gap) {
                    out.append(' ');
                    gap = false;
                }
                out.append(c);
            }
        }
        return text.contentEquals(out) ? text : out.toString();
    }

    /** Decomposed before case is changed, as Unicode's caseless match asks (D145): a mark stays with its letter. */
    private static String fold(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > 0x7f) {
                String upper = Normalizer.normalize(text, Normalizer.Form.NFKD).toUpperCase(Locale.ROOT);
                return singleSpaced(Normalizer.normalize(upper.toLowerCase(Locale.ROOT), Normalizer.Form.NFKC));
            }
        }
        return text.toLowerCase(Locale.ROOT);
    }

    /**
     * The name as written.
     *
     * @return the words with single spaces
     */
    public String text() {
        return text;
    }

    /**
     * The form in which names are compared.
     *
     * @return the folded text
     */
    public String key() {
        return key;
    }

    @Override
    public int compareTo(TradeName other) {
        return key.compareTo(other.key);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TradeName that && key.equals(that.key);
    }

    @Override
    public int hashCode() {
        return key.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
