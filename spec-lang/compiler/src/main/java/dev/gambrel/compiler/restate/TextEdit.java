package dev.gambrel.compiler.restate;

/**
 * Other characters for some of a text.
 *
 * @param start the first character that goes, counted from 0
 * @param end the first that stays; as the start where nothing goes
 * @param words what stands there instead
 */
public record TextEdit(int start, int end, String words) {}
