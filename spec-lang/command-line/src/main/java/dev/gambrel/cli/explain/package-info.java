/** {@code gambrel explain}: every kind of finding, each with a page among the resources. */
package dev.gambrel.cli.explain;
