package dev.gambrel.compiler.format;

import dev.gambrel.compiler.parse.Word;
import java.util.List;

/**
 * A line of a text.
 *
 * @param words its words without the line end; none in an empty line
 * @param indent how many spaces stand before it
 * @param goesOn whether it goes on from the comma at the end of a line before
 * @param neighbours the number of the group of lines whose columns it shares
 */
record Line(List<Word> words, int indent, boolean goesOn, int neighbours) {}
