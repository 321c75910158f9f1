/** From lines to meaning: names, quantities, and the cut tree. */
package dev.gambrel.compiler.lower;
