/** Pages to be looked at and printed. */
package dev.gambrel.reports.page;
