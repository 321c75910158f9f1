/** Source text, places in it, and names as the trade writes them. Immutable; safe between threads. */
package dev.gambrel.text;
