/** Where the values of a specification come from, part by part, before it is printed. */
package dev.gambrel.cli.origin.report;
