/** Where texts come from: a folder that cannot be left, and the bundled catalogue of species. */
package dev.gambrel.compiler.source;
