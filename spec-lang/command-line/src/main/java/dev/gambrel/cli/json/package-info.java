/** Findings and yields as JSON, for programs. Loaded only when JSON is asked for. */
package dev.gambrel.cli.json;
