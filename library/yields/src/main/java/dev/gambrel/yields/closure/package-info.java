/** How the shares of one cut, which always add up to the whole, vary together. Immutable. */
package dev.gambrel.yields.closure;
