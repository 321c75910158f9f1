package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;

/**
 * A name where it is written.
 *
 * @param text the name
 * @param span its place
 */
public record Name(TradeName text, Span span) {}
