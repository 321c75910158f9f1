package dev.gambrel.blends;

/**
 * Some of a tub.
 *
 * @param tub the tub
 * @param kilograms how much of it, from nothing to all
 */
public record Taken(Tub tub, double kilograms) {}
