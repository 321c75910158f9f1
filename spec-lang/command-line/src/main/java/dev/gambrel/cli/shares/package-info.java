/** The verb that tells a house its own shares, and proposes them for its specification. */
package dev.gambrel.cli.shares;
