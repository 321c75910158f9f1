/** How much input is taken before it is refused. Immutable; safe between threads. */
package dev.gambrel.limits;
