/** Expected yields in print: plain text and comma-separated values, whose figures add up as printed. */
package dev.gambrel.yields.table;
