package dev.gambrel.yields.testedcuts;

import dev.gambrel.yields.cuttingtest.CuttingTest;

/**
 * A cutting test and what it is called.
 *
 * @param name such as that of its weigh sheet
 * @param test the test
 */
public record NamedTest(String name, CuttingTest test) {}
