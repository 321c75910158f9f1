/** What a cutting test shows, drawn: one class for each picture. Immutable values, safe between threads. */
package dev.gambrel.reports.picture;
