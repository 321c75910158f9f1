/** What portions come to: how many, how heavy, what is lost to the cuts and what is left. Immutable values. */
package dev.gambrel.yields.portions;
