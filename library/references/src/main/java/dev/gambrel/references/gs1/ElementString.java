package dev.gambrel.references.gs1;

import dev.gambrel.quantity.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * The elements of a label, in the order in which they stand.
 *
 * @param elements at least one
 */
public record ElementString(List<Element> elements) {
    /** What stands between two elements where the length of the first is not fixed: FNC1, the group separator. */
    public static final char SEPARATOR = '\u001d';

    /** Copies the list. */
    public ElementString {
        elements = List.copyOf(elements);
    }

    /**
     * The first element of an identifier.
     *
     * @param pattern as in {@link Identifier#pattern}, such as "310n"
     * @return the element, or nothing if there is none
     */
    public Optional<Element> find(String pattern) {
        return elements.stream()
                .filter(element -> element.identifier().pattern().equals(pattern))
                .findFirst();
    }

    /**
     * The trade item.
     *
     * @return from (01), or nothing
     */
    public Optional<Gtin> gtin() {
        return find("01").map(element -> new Gtin(element.value()));
    }

    /**
     * The net weight.
     *
     * @return in kilograms from (310n), else in pounds from (320n), or nothing
     */
    public Optional<Quantity> netWeight() {
        return find("310n").or(() -> find("320n")).flatMap(Element::weight);
    }

    /**
     * As people read it. A lot that itself holds digits in brackets cannot be read back from this form.
     *
     * @return for example "(01)…(3103)000035"
     */
    public String bracketed() {
        StringBuilder out = new StringBuilder();
        elements.forEach(out::append);
        return out.toString();
    }

    /**
     * As a scanner gives it.
     *
     * @return the elements one after another, with {@link #SEPARATOR} only where it must stand
     */
    public String raw() {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < elements.size(); i++) {
            Element element = elements.get(i);
            out.append(element.digits()).append(element.value());
            if (!element.identifier().form().isPredefined() && i + 1 < elements.size()) {
                out.append(SEPARATOR);
            }
        }
        return out.toString();
    }
}
