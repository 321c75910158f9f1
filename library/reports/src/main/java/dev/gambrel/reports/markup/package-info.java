/** The one way in which XML is written here. */
package dev.gambrel.reports.markup;
