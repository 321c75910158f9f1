/** Rows and cells of a CSV file, read and written without an object for each. Not for whoever embeds the library. */
package dev.gambrel.batches.csv;
