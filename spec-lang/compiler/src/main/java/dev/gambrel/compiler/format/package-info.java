/** Lays a specification out anew, word for word the same. */
package dev.gambrel.compiler.format;
