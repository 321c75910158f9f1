/** Findings as data: what was found, where, and what to do next. Immutable; safe between threads. */
package dev.gambrel.diagnostic;
