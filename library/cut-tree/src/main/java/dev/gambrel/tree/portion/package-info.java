/** How a cut is portioned: what is aimed at, what is accepted, how it is sliced, tied and packed. Immutable values. */
package dev.gambrel.tree.portion;
