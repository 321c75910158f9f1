/**
 * What was answered, to be read, signed or taken into a spreadsheet: plain text, comma-separated values, a page. All text is made
 * harmless before it is set. Immutable; safe between threads.
 */
package dev.gambrel.yields.conformance.report;
