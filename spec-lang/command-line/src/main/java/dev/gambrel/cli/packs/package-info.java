/** Packs that were weighed, from a file or the command line: what their test says, as text. */
package dev.gambrel.cli.packs;
