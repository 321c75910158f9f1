/** From text to lines: reads words, finds statements, and reports what cannot be read. No grammar class leaves here. */
package dev.gambrel.compiler.parse;
