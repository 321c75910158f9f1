/** What holds for every specification: laws over all of it together. */
package dev.gambrel.conformance.laws;
