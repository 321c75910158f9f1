/** {@code gambrel check}: says what is wrong with a specification. */
package dev.gambrel.cli.check;
