package dev.gambrel.cli;

import java.io.PrintStream;

/**
 * Where the program prints.
 *
 * @param out results
 * @param err findings about the call, and what accompanies results that a program may read
 * @param colour whether words may be marked with colour
 */
public record Terminal(PrintStream out, PrintStream err, boolean colour) {}
