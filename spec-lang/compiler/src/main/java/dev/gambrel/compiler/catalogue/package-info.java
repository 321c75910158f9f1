/** The catalogue as values to look up: the species that it has, and a cut of one by any of its names. */
package dev.gambrel.compiler.catalogue;
