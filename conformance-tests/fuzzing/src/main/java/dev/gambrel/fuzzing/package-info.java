/**
 * What must hold whatever a file holds, one class for each way in. Each is a target for a coverage-guided fuzzer and an ordinary
 * method to call: it takes the bytes of a file and throws an {@link java.lang.AssertionError} where something does not hold.
 */
package dev.gambrel.fuzzing;
