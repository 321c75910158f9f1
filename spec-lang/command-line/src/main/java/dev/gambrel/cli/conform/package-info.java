/** {@code gambrel conform}. */
package dev.gambrel.cli.conform;
