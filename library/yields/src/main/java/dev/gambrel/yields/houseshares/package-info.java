/**
 * A house's own shares from its cutting tests: mean, spread between carcasses and doubt about the mean, kept apart; with the
 * published figures as a prior where a house has few tests. Immutable values.
 */
package dev.gambrel.yields.houseshares;
