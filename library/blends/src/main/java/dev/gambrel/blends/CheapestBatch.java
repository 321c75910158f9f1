package dev.gambrel.blends;

/**
 * The cheapest batch of its weight. Where no tub has a price it is the one that spares the leanest meat.
 *
 * @param blend how much of which tub
 * @param leaner what a target one point leaner would cost
 * @param fatter what a target one point fatter would cost
 */
public record CheapestBatch(Blend blend, PointOfLean leaner, PointOfLean fatter) {}
