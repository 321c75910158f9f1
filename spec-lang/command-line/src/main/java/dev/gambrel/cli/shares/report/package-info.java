/** What cutting tests say of a house's shares, as text and as JSON. */
package dev.gambrel.cli.shares.report;
