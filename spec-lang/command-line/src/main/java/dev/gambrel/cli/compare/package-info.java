/** {@code gambrel compare}: says what differs between two specifications, and what that does. */
package dev.gambrel.cli.compare;
