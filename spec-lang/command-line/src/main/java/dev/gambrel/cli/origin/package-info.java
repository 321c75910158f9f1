/** {@code gambrel origin}: says where the values of a specification come from. */
package dev.gambrel.cli.origin;
