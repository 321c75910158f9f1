/** Measures and estimates of the tree from their lines. For the lowering; embedders ask the compiler. */
package dev.gambrel.compiler.estimate;
