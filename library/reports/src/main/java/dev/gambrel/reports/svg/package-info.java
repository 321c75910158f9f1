/** Pictures as shapes, and as SVG. Lengths are in pixels of a screen: 96 to an inch. */
package dev.gambrel.reports.svg;
