/** What several verbs take on the command line. */
package dev.gambrel.cli.argument;
