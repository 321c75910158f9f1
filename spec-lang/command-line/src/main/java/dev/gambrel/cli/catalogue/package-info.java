/** {@code gambrel catalogue}: shows the species that come with the program. */
package dev.gambrel.cli.catalogue;
