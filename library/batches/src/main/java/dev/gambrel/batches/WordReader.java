package dev.gambrel.batches;

import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * Reads a cell that holds one of a few words. A word in the very letters of the specification is found without making an object.
 *
 * @param words the words
 */
record WordReader(List<TradeName> words) {
    static final int EMPTY = -1;
    static final int OTHER = -2;

    /** Which of the words it is, or {@link #EMPTY} or {@link #OTHER}. */
    int read(char[] text, int begin, int end) {
        for (int i = 0; i < words.size(); i++) {
            if (isSame(words.get(i).text(), text, begin, end)) {
                return i;
            }
        }
        String written = new String(text, begin, end - begin).strip();
        if (written.isEmpty()) {
            return EMPTY;
        }
        int found = TradeName.isAcceptable(written) ? words.indexOf(TradeName.of(written)) : -1;
        return found >= 0 ? found : OTHER;
    }

    private static boolean isSame(String word, char[] text, int begin, int end) {
        if (word.length() != end - begin) {
            return false;
        }
        for (int i = 0; i < word.length(); i++) {
            if (word.charAt(i) != text[begin + i]) {
                return false;
            }
        }
        return true;
    }
}
