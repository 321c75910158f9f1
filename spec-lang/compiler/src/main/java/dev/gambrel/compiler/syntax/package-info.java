/** What was written, line by line, with its place in the text. Immutable; knows nothing of meaning. */
package dev.gambrel.compiler.syntax;
