package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.portion.Limit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Facts as they are collected. Not thread-safe. */
final class Facts {
    private final List<Fact> all = new ArrayList<>();

    List<Fact> all() {
        return all;
    }

    void reliedOn(String what, Aspect aspect, int index, List<String> value, String words) {
        add(what, aspect, index, new Meaning.ReliedOn(value, List.of()), words);
    }

    void reliedOn(String what, Aspect aspect, String value, String words) {
        reliedOn(what, aspect, 0, List.of(value), words);
    }

    void limit(String what, Aspect aspect, int index, Limit limit) {
        limit(what, aspect, index, new Meaning.Bounded("", limit), limit.toString());
    }

    void limit(String what, Aspect aspect, int index, Meaning.Bounded bounded, String words) {
        Limit limit = bounded.limit();
        all.add(new Fact(
                what,
                aspect,
                index,
                bounded,
                words,
                Stream.concat(limit.least().stream(), limit.most().stream()).toList()));
    }

    void figure(String what, Aspect aspect, int index, Expected expected) {
        figure(what, aspect, index, "", expected);
    }

    void figure(String what, Aspect aspect, int index, String kind, Expected expected) {
        Meaning meaning = new Meaning.Figure(kind, Exact.of(expected));
        all.add(new Fact(what, aspect, index, meaning, expected.toString(), Exact.quantities(expected)));
    }

    void figure(String what, Aspect aspect, int index, List<String> value, String words) {
        add(what, aspect, index, new Meaning.Figure("", value), words);
    }

    void work(String what, Aspect aspect, List<String> value, String words) {
        add(what, aspect, 0, new Meaning.Work(value), words);
    }

    void free(String what, Aspect aspect, int index, String words) {
        add(what, aspect, index, new Meaning.Free(words), words);
    }

    void sources(String what, Aspect aspect, int index, List<TradeName> sources) {
        if (!sources.isEmpty()) {
            Meaning cited = new Meaning.Free(String.join("\n", Exact.unordered(sources)));
            add("source of " + what, aspect, index, cited, listed(sources));
        }
    }

    void add(String what, Aspect aspect, int index, Meaning meaning, String words) {
        all.add(new Fact(what, aspect, index, meaning, words, List.of()));
    }

    static String listed(Collection<TradeName> names) {
        return names.stream().map(TradeName::text).collect(Collectors.joining(", "));
    }
}
