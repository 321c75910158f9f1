/**
 * Specifications in files with what the compiler says of them beside each: all that a processor may write, and all that
 * may go wrong with it. Run with {@code -Dupdate=true} to write the expected text anew, and read what changed.
 */
package dev.gambrel.conformance.corpus;
