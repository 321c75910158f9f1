/** {@code gambrel format}: lays specifications out. */
package dev.gambrel.cli.format;
