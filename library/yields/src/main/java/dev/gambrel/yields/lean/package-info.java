/** How lean a stream is, from what goes into it. */
package dev.gambrel.yields.lean;
