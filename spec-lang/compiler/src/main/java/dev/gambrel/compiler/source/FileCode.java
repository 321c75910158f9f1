package dev.gambrel.compiler.source;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** The kinds of finding about files, and how many of them. All are errors. */
public enum FileCode implements Code {
    /** The file cannot be read. */
    CANNOT_READ("G0101", "cannot-read", "The file {file} cannot be read."),
    /** The file is larger than is taken. */
    TOO_LARGE("G0102", "too-large", "The file {file} is {found} bytes; at most {allowed} are taken."),
    /** The file is not text. */
    NOT_TEXT("G0103", "not-text", "The file {file} is not text in UTF-8."),
    /** More statements than are taken. */
    TOO_MANY_LINES("G0105", "too-many-lines", "There are more than {allowed} statements."),
    /** More files than are taken. */
    TOO_MANY_FILES("G0106", "too-many-files", "There are more than {allowed} files in use."),
    /** The file lies elsewhere. */
    OUTSIDE("G0107", "use-outside", "“{file}” lies outside the folder of this specification."),
    /** No such file. */
    MISSING("G0108", "use-missing", "There is no specification file “{file}” here."),
    /** A file that uses itself in the end. */
    CIRCULAR("G0109", "use-circular", "“{file}” uses itself in the end."),
    /** Files that use files beyond what is taken. */
    TOO_DEEP("G0110", "use-too-deep", "Files use files {found} deep here; at most {allowed} are taken."),
    /** No such part of the catalogue. */
    NOT_IN_CATALOGUE("G0113", "not-in-catalogue", "The catalogue has no {species}.");

    private final Kind kind;

    FileCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
