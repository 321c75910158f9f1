package dev.gambrel.json.writing;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A JSON value on its way out. */
sealed interface Canonical {
    /** Words in quotation marks. */
    record Words(String text) implements Canonical {}

    /** A number. */
    record Figure(BigDecimal value) implements Canonical {}

    /** A list. */
    record Items(List<Canonical> items) implements Canonical {}

    /** An object whose fields keep the order in which they are put; what is not stated is never put. */
    final class Fields implements Canonical {
        private final Map<String, Canonical> values = new LinkedHashMap<>();

        Map<String, Canonical> values() {
            return values;
        }

        Fields put(String field, Canonical value) {
            values.put(field, value);
            return this;
        }

        Fields put(String field, Object words) {
            return put(field, new Words(words.toString()));
        }

        Fields put(String field, long count) {
            return put(field, count(count));
        }

        Fields put(String field, BigDecimal figure) {
            return put(field, new Figure(figure));
        }

        Fields putIfStated(String field, Optional<? extends Canonical> value) {
            value.ifPresent(stated -> put(field, stated));
            return this;
        }

        Fields putUnlessEmpty(String field, String words) {
            return words.isEmpty() ? this : put(field, words);
        }

        <T> Fields putUnlessEmpty(String field, List<T> list, Function<? super T, ? extends Canonical> item) {
            return list.isEmpty() ? this : put(field, items(list, item));
        }

        Fields putUnlessEmpty(String field, List<?> words) {
            return putUnlessEmpty(field, words, word -> new Words(word.toString()));
        }
    }

    static <T> Items items(List<T> list, Function<? super T, ? extends Canonical> item) {
        return new Items(list.stream().<Canonical>map(item).toList());
    }

    static Figure count(long count) {
        return new Figure(BigDecimal.valueOf(count));
    }

    static Fields fields() {
        return new Fields();
    }

    static Fields kind(String kind) {
        return fields().put("kind", kind);
    }
}
