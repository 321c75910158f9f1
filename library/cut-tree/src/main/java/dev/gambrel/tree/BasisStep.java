package dev.gambrel.tree;

import dev.gambrel.text.TradeName;

/**
 * What is lost between two weighings of one carcass.
 *
 * @param from the earlier basis
 * @param to the later basis
 * @param loss what the loss is called
 * @param share how much, in per cent of the earlier weight
 */
public record BasisStep(Basis from, Basis to, TradeName loss, Expected share) {}
