/** What is to be said of a weigh sheet, as text and as JSON. */
package dev.gambrel.cli.balance.report;
