/** The meaning of a number in rows, before it is text or JSON. */
package dev.gambrel.cli.number.report;
