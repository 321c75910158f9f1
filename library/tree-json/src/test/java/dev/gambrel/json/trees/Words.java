package dev.gambrel.json.trees;

import dev.gambrel.text.TradeName;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Tuple;

/** Names and free words. */
final class Words {
    private static final List<String> SPOKEN =
            List.of("leg", "best end of neck", "Thick Flank", "côte", "羊肉", "saddle \"short\"", "rib\\eye", "🐑 chop");

    private Words() {}

    static Arbitrary<TradeName> names() {
        Arbitrary<String> any =
                Arbitraries.strings().ofMinLength(1).ofMaxLength(12).filter(Words::hasLetters);
        return Arbitraries.frequencyOf(Tuple.of(3, Arbitraries.of(SPOKEN)), Tuple.of(1, any))
                .map(TradeName::of);
    }

    /** Not even a no-break space alone, which is taken for a name but leaves none. */
    private static boolean hasLetters(String text) {
        return TradeName.isAcceptable(text) && !TradeName.of(text).text().isEmpty();
    }

    static Arbitrary<List<TradeName>> nameLists() {
        return few(names());
    }

    /** Anything that a string can hold, lone surrogates and direction characters too. */
    static Arbitrary<String> free() {
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(20),
                Arbitraries.of("", "\u202etxet", "a\nb\t\"c\"\\", "\ud83d", "\u0000\u007f\u009f", "½ in, 3 °C"));
    }

    static Arbitrary<List<String>> freeLists() {
        return few(free());
    }

    static <T> Arbitrary<List<T>> few(Arbitrary<T> one) {
        return one.list().ofMaxSize(3);
    }
}
