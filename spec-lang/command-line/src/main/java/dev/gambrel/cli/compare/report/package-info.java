/** What was compared, for whoever prints it. */
package dev.gambrel.cli.compare.report;
