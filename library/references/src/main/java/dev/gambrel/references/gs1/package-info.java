/**
 * Element strings of GS1: what stands in the bar code of a label, as pairs of an application identifier and a value.
 *
 * <p>Forms, lengths and which identifiers go together: GS1 Barcode Syntax Dictionary, GS1 AISBL, seen. Only the identifiers that labels of
 * meat carry are known. Immutable values.
 */
package dev.gambrel.references.gs1;
