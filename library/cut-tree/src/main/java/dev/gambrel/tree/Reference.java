package dev.gambrel.tree;

import dev.gambrel.text.TradeName;

/**
 * A cut's number in a published scheme.
 *
 * @param scheme who numbers: "UNECE"
 * @param number the number as printed, which may carry letters
 * @param edition the edition as printed, usually a year; empty where none was given
 */
public record Reference(TradeName scheme, String number, String edition) {}
