package dev.gambrel.tree;

/**
 * What a specification is called.
 *
 * @param title the house's title
 * @param revision its number, from 1
 */
public record Specification(String title, int revision) {}
