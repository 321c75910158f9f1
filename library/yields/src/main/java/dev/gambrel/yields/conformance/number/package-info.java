/** Reference numbers against the words beside them, and the weight ranges that they name. Immutable. */
package dev.gambrel.yields.conformance.number;
