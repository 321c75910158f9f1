package dev.gambrel.diagnostic;

import dev.gambrel.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * One finding: a kind, the values found, where, and what to do next.
 *
 * <p>Build one from {@link #of} and the methods that add to it; each returns a new value.
 *
 * @param code the kind
 * @param arguments the values in its sentence
 * @param place what to underline
 * @param related other places, with words
 * @param notes what helps to understand it; a note may have several lines
 * @param help what to do next, one entry for each way; empty where nothing is to be done
 * @param fixes changes to the text that would answer it, best first
 */
public record Diagnostic(
        Code code,
        List<Argument> arguments,
        Place place,
        List<Label> related,
        List<String> notes,
        List<String> help,
        List<Fix> fixes) {
    /** Copies the lists. */
    public Diagnostic {
        Objects.requireNonNull(code);
        Objects.requireNonNull(place);
        arguments = List.copyOf(arguments);
        related = List.copyOf(related);
        notes = List.copyOf(notes);
        help = List.copyOf(help);
        fixes = List.copyOf(fixes);
    }

    /**
     * A finding with nothing but its kind and place.
     *
     * @param code the kind
     * @param place where
     * @return the finding
     */
    public static Diagnostic of(Code code, Place place) {
        return new Diagnostic(code, List.of(), place, List.of(), List.of(), List.of(), List.of());
    }

    /**
     * With words in its sentence.
     *
     * @param name the name in braces
     * @param value anything whose text is the value
     * @return the fuller finding
     */
    public Diagnostic with(String name, Object value) {
        return with(new Argument.Text(name, value.toString()));
    }

    /**
     * With a count in its sentence.
     *
     * @param name the name in braces
     * @param count how many
     * @return the fuller finding
     */
    public Diagnostic with(String name, long count) {
        return with(new Argument.Count(name, count));
    }

    /**
     * With a quantity in its sentence.
     *
     * @param name the name in braces
     * @param quantity the quantity
     * @return the fuller finding
     */
    public Diagnostic with(String name, Quantity quantity) {
        return with(new Argument.Measure(name, quantity));
    }

    private Diagnostic with(Argument argument) {
        return new Diagnostic(code, plus(arguments, argument), place, related, notes, help, fixes);
    }

    /**
     * With another place.
     *
     * @param where the place
     * @param words what is there
     * @return the fuller finding
     */
    public Diagnostic related(Place where, String words) {
        return new Diagnostic(code, arguments, place, plus(related, new Label(where, words)), notes, help, fixes);
    }

    /**
     * With something that helps to understand it.
     *
     * @param note full sentences, or a column of figures in several lines
     * @return the fuller finding
     */
    public Diagnostic note(String note) {
        return new Diagnostic(code, arguments, place, related, plus(notes, note), help, fixes);
    }

    /**
     * With something to do about it.
     *
     * @param advice a full sentence
     * @return the fuller finding
     */
    public Diagnostic help(String advice) {
        return new Diagnostic(code, arguments, place, related, notes, plus(help, advice), fixes);
    }

    /**
     * With a change that would answer it.
     *
     * @param fix the change
     * @return the fuller finding
     */
    public Diagnostic fix(Fix fix) {
        return new Diagnostic(code, arguments, place, related, notes, help, plus(fixes, fix));
    }

    /**
     * The same finding with every place told in another way, for example tree places found in a text.
     *
     * @param mapping from place to place
     * @return the finding at its new places
     */
    public Diagnostic at(UnaryOperator<Place> mapping) {
        List<Label> moved = related.stream()
                .map(label -> new Label(mapping.apply(label.place()), label.words()))
                .toList();
        return new Diagnostic(code, arguments, mapping.apply(place), moved, notes, help, fixes);
    }

    /**
     * How much it matters.
     *
     * @return the severity of its kind
     */
    public Severity severity() {
        return code.severity();
    }

    /**
     * The sentence with the values in it.
     *
     * @return one plain sentence
     */
    public String message() {
        String pattern = code.pattern();
        StringBuilder out = new StringBuilder(pattern.length() + 32);
        int at = 0;
        for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', at)) {
            int close = pattern.indexOf('}', open);
            out.append(pattern, at, open).append(shown(pattern.substring(open + 1, close)));
            at = close + 1;
        }
        return out.append(pattern, at, pattern.length()).toString();
    }

    private String shown(String name) {
        for (Argument argument : arguments) {
            if (argument.name().equals(name)) {
                return argument.shown();
            }
        }
        throw new IllegalStateException(code.id() + " lacks its argument " + name);
    }

    private static <T> List<T> plus(List<T> list, T item) {
        List<T> longer = new ArrayList<>(list.size() + 1);
        longer.addAll(list);
        longer.add(item);
        return longer;
    }
}
