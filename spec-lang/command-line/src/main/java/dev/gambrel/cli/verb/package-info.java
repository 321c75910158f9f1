/** What a verb is. */
package dev.gambrel.cli.verb;
