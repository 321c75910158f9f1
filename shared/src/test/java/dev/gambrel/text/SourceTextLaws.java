package dev.gambrel.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;

class SourceTextLaws {
    @Property
    void every_offset_lies_in_the_line_that_it_is_told_to_be_in(
            @ForAll @Chars({'\n', '\r', ' '}) @CharRange(from = 'a', to = 'c') String written) {
        SourceText text = new SourceText("hogget.cuts", written);
        for (int offset = 0; offset <= written.length(); offset++) {
            Position position = text.position(offset);
            Span line = text.line(position.line());
            assertEquals(offset, line.start() + position.column() - 1);
            boolean inLineEnd = offset > line.end();
            assertTrue(!inLineEnd || "\r\n".indexOf(written.charAt(offset - 1)) >= 0);
        }
    }

    @Property
    void lines_and_their_ends_are_the_whole_text(
            @ForAll @Chars({'\n', '\r', ' '}) @CharRange(from = 'a', to = 'c') String written) {
        SourceText text = new SourceText("hogget.cuts", written);
        StringBuilder lines = new StringBuilder();
        for (int line = 1; line <= text.lineCount(); line++) {
            lines.append(text.slice(text.line(line))).append('\n');
        }
        String oneKindOfEnd = written.replace("\r\n", "\n").replace('\r', '\n') + "\n";
        assertEquals(oneKindOfEnd, lines.toString());
    }
}
