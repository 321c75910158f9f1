package dev.gambrel.references.gs1;

import dev.gambrel.text.Span;

/**
 * An element and where it stands.
 *
 * @param element the element
 * @param place its identifier and its value, without what stands around them
 * @param value its value alone
 */
record Written(Element element, Span place, Span value) {}
