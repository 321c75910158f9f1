/** The catalogue in print. */
package dev.gambrel.cli.catalogue;
