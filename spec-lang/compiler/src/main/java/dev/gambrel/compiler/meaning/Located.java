package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Statement.Declaration;

/**
 * A line together with the file that it stands in.
 *
 * @param line the line
 * @param report findings about its file
 */
public record Located(Declaration line, FileReport report) {}
