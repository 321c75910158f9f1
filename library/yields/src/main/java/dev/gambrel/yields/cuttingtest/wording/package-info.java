/** What is said of a cutting test, in sentences: the same wherever it is printed. */
package dev.gambrel.yields.cuttingtest.wording;
