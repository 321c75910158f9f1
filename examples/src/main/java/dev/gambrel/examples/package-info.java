/** Small programs that put the library into another program. Each stands alone and is run by the tests. */
package dev.gambrel.examples;
