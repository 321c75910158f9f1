/** What the clauses of a line mean: quantities, counts, names, citations. For the lowering; embedders ask the compiler. */
package dev.gambrel.compiler.meaning;
