package dev.gambrel.cli.terminal;

import java.io.InputStream;
import java.io.PrintStream;

/**
 * Where the program prints, and what is handed to it.
 *
 * @param out results
 * @param err findings about the call, and what accompanies results that a program may read
 * @param colour whether words may be marked with colour
 * @param in what is handed to the program; read only where it is asked for
 */
public record Terminal(PrintStream out, PrintStream err, boolean colour, InputStream in) {
    /**
     * Where the program prints when nothing is handed to it.
     *
     * @param out results
     * @param err findings about the call, and what accompanies results that a program may read
     * @param colour whether words may be marked with colour
     */
    public Terminal(PrintStream out, PrintStream err, boolean colour) {
        this(out, err, colour, InputStream.nullInputStream());
    }
}
