package dev.gambrel.json;

/**
 * A way to make something of a JSON value.
 *
 * <p>It never fails: for a value that will not do it adds a finding and returns a stand-in, so that everything else in
 * the file is read too. A stand-in never leaves the package, since no tree is returned beside an error.
 */
@FunctionalInterface
interface Reading<T> {
    T read(Located value, Findings findings);
}
