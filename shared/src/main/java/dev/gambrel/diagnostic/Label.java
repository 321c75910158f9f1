package dev.gambrel.diagnostic;

/**
 * Another place that a finding is about, with words for it.
 *
 * @param place where
 * @param words what is there; a few words, no full stop
 */
public record Label(Place place, String words) {}
