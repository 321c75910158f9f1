package dev.gambrel.json.located;

/**
 * A way to make something of a JSON value.
 *
 * <p>It never fails: for a value that will not do it adds a finding and returns a stand-in, so that everything else in
 * the file is read too. A stand-in is never used, since nothing is made of a file with an error.
 *
 * @param <T> what it makes
 */
@FunctionalInterface
public interface Reading<T> {
    /**
     * Makes something of a value.
     *
     * @param value the value
     * @param findings where it is told if it will not do
     * @return what was made, or a stand-in
     */
    T read(Located value, Findings findings);
}
