/** The UNECE meat code of 20 digits: what each digit means, reading one, writing one. Immutable values. */
package dev.gambrel.references.unece;
