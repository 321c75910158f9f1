/** What a tree is written as, piece by piece, and the one form in which JSON is printed. Embedders ask {@code TreeJsonWriter}. */
package dev.gambrel.json.writing;
