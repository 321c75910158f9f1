package dev.gambrel.compiler.restate;

import dev.gambrel.text.SourceText;
import java.util.List;

/**
 * A file before and after.
 *
 * @param before as it is
 * @param after as it would be
 * @param edits what differs, from the first character to the last
 */
public record RestatedText(SourceText before, SourceText after, List<TextEdit> edits) {
    /** Copies the list. */
    public RestatedText {
        edits = List.copyOf(edits);
    }

    /**
     * The change as a unified diff, for {@code patch -p0} or {@code git apply -p0} in the folder of the specification.
     *
     * @return the diff, with the line ends of the text
     */
    public String diff() {
        return UnifiedDiff.of(this);
    }

    static RestatedText of(SourceText before, List<TextEdit> edits) {
        StringBuilder after = new StringBuilder();
        int at = 0;
        for (TextEdit edit : edits) {
            after.append(before.text(), at, edit.start()).append(edit.words());
            at = edit.end();
        }
        after.append(before.text(), at, before.text().length());
        return new RestatedText(before, new SourceText(before.name(), after.toString()), edits);
    }
}
