/** Who may know whom, what no code may do, and how long anything may be: held by rules over classes and sources. */
package dev.gambrel.conformance.architecture;
