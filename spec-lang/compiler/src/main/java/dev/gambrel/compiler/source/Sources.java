package dev.gambrel.compiler.source;

/** Finds the files that a specification uses. It is asked before anything is read. */
public interface Sources {
    /**
     * Finds a file.
     *
     * @param name what the {@code use} line says
     * @param user the name of the text that the line stands in
     * @return the text, or why there is none
     */
    Found find(String name, String user);

    /**
     * No files at all: for a text from a stranger.
     *
     * @return sources that refuse everything as lying outside
     */
    static Sources none() {
        return (name, user) -> new Found.Refused(FileCode.OUTSIDE, 0);
    }
}
