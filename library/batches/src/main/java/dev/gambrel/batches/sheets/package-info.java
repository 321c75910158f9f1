/** Weigh sheets of cutting tests: a heading, then a row for each part that was weighed. What cannot be right is asked about, never put right. */
package dev.gambrel.batches.sheets;
