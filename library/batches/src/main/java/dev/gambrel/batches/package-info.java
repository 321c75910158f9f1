/**
 * A file of carcasses, one to a row, worked out against one specification: streaming, in bounded memory, on several threads, and
 * with the same bytes whatever their number. Every row is either worked out or refused with a reason.
 */
package dev.gambrel.batches;
