package dev.gambrel.text;

/**
 * A place for people: line and column.
 *
 * @param line counted from 1
 * @param column UTF-16 characters into the line, counted from 1
 */
public record Position(int line, int column) {}
