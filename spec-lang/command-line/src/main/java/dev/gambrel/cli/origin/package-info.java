/** Where the values of a specification come from, part by part, in words and in JSON. */
package dev.gambrel.cli.origin;
