/** {@code gambrel estimate}: works out equations for what was measured. */
package dev.gambrel.cli.estimate;
