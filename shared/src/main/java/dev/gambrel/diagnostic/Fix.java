package dev.gambrel.diagnostic;

/**
 * A change to the text that would answer a finding. It is offered, never made unasked.
 *
 * @param place what to replace
 * @param replacement what to write there
 * @param certain true if the change keeps the meaning that the text already has; false if it is a guess to be confirmed
 */
public record Fix(Place.InText place, String replacement, boolean certain) {}
