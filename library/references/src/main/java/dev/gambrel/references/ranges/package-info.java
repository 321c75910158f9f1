/** Published weight ranges of pieces as data, and in which of them a piece lies. Immutable values. */
package dev.gambrel.references.ranges;
