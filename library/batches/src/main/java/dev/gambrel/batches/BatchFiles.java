package dev.gambrel.batches;

import java.io.InputStream;
import java.io.OutputStream;

/**
 * Where a batch comes from and goes to. Nothing is closed.
 *
 * @param name what the file of carcasses is called in findings
 * @param in the carcasses: CSV in UTF-8, or in UTF-16 with a byte order mark
 * @param out what is written of each carcass, as CSV
 * @param refused the rows that are refused, as CSV with line and reason, so that nothing is lost
 * @param progress who is told how far it has come
 */
public record BatchFiles(String name, InputStream in, OutputStream out, OutputStream refused, Progress progress) {
    /**
     * Carcasses of which the sums alone are kept.
     *
     * @param name what the file is called in findings
     * @param in the carcasses
     * @return files of which none is written
     */
    public static BatchFiles reading(String name, InputStream in) {
        return new BatchFiles(
                name, in, OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), Progress.SILENT);
    }

    /**
     * With what is written of each carcass.
     *
     * @param to where to
     * @return the files
     */
    public BatchFiles writing(OutputStream to) {
        return new BatchFiles(name, in, to, refused, progress);
    }

    /**
     * With the rows that are refused.
     *
     * @param to where to
     * @return the files
     */
    public BatchFiles refusing(OutputStream to) {
        return new BatchFiles(name, in, out, to, progress);
    }

    /**
     * With somebody who is told how far it has come.
     *
     * @param who who
     * @return the files
     */
    public BatchFiles telling(Progress who) {
        return new BatchFiles(name, in, out, refused, who);
    }
}
