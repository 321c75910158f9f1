/** The rules that any cut tree must keep, however it was made. Pure functions; safe between threads. */
package dev.gambrel.tree.rules;
