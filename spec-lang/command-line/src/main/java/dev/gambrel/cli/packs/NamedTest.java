package dev.gambrel.cli.packs;

import dev.gambrel.yields.packs.rule.Directive76211;
import dev.gambrel.yields.packs.rule.Handbook133;
import dev.gambrel.yields.packs.rule.PackTest;
import dev.gambrel.yields.packs.rule.Recommendation87;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tests by the words that choose them on the command line. */
enum NamedTest {
    EU("eu", Directive76211.NOT_DESTRUCTIVE),
    EU_OPENED("eu opened", Directive76211.DESTRUCTIVE),
    UK("uk", Directive76211.UK_NOT_DESTRUCTIVE),
    UK_OPENED("uk opened", Directive76211.UK_DESTRUCTIVE),
    OIML("oiml", Recommendation87.REFERENCE_TEST),
    NIST("nist", Handbook133.CATEGORY_A),
    PACKER("packer", Directive76211.PACKERS_RULES);

    private final String word;
    private final PackTest test;

    NamedTest(String word, PackTest test) {
        this.word = word;
        this.test = test;
    }

    PackTest test() {
        return test;
    }

    static Optional<NamedTest> of(String word) {
        return Stream.of(values())
                .filter(named -> named.word.equalsIgnoreCase(word.strip()))
                .findFirst();
    }

    static String words() {
        return Stream.of(values()).map(named -> named.word).collect(Collectors.joining(", "));
    }
}
