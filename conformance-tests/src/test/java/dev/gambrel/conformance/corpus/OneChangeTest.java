package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.comparison.Change;
import dev.gambrel.yields.comparison.Comparison;
import dev.gambrel.yields.comparison.Effect;
import dev.gambrel.yields.comparison.Said;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One thing said otherwise is one change, of that aspect and with that effect. */
class OneChangeTest {
    private static final String SHEET = Corpus.read(Corpus.folder("comparisons").resolve("sheet.cuts"));

    record Otherwise(String said, String instead, String aspect, String effect) {
        static Otherwise of(String line) {
            String[] cells = line.split("\\|", -1);
            return new Otherwise(cells[0].strip(), cells[1].strip(), cells[2].strip(), cells[3].strip());
        }
    }

    static List<Otherwise> changes() {
        return Corpus.read(Corpus.folder("comparisons").resolve("changes.txt"))
                .lines()
                .map(Otherwise::of)
                .toList();
    }

    private static CutTree tree(String text) {
        return new SpecCompiler()
                .compile(new SourceText("sheet.cuts", text), Sources.none())
                .orElseThrow()
                .tree();
    }

    private static String revised(Otherwise otherwise) {
        int at = SHEET.indexOf(otherwise.said());
        assertTrue(at >= 0, "the sheet does not say " + otherwise.said());
        return SHEET.substring(0, at)
                + otherwise.instead()
                + SHEET.substring(at + otherwise.said().length());
    }

    @ParameterizedTest
    @MethodSource("changes")
    void it_is_told_once(Otherwise otherwise) {
        List<Change> changes =
                Comparison.of(tree(SHEET), tree(revised(otherwise))).changes();
        assertEquals(1, changes.size(), changes.toString());
        assertEquals(otherwise.aspect(), aspect(changes.get(0)));
        assertEquals(otherwise.effect(), changes.get(0).effect().words());
    }

    private static String aspect(Change change) {
        return change.aspect().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static final Map<Effect, Effect> BACK = Map.of(
            Effect.TIGHTENS, Effect.LOOSENS,
            Effect.LOOSENS, Effect.TIGHTENS,
            Effect.ADDS, Effect.BREAKS);

    @ParameterizedTest
    @MethodSource("changes")
    void taken_back_it_does_the_opposite(Otherwise otherwise) {
        CutTree before = tree(SHEET);
        CutTree after = tree(revised(otherwise));
        Change there = Comparison.of(before, after).changes().get(0);
        Change back = Comparison.of(after, before).changes().get(0);
        boolean isGone = !(there.is() instanceof Said.Stated) && there.effect() == Effect.BREAKS;
        assertEquals(isGone ? Effect.ADDS : BACK.getOrDefault(there.effect(), there.effect()), back.effect());
        assertEquals(there.was(), back.is());
        assertEquals(there.is(), back.was());
    }

    @Test
    void every_effect_is_among_them() {
        Stream<String> effects = changes().stream().map(Otherwise::effect);
        assertEquals(Effect.values().length, effects.collect(Collectors.toSet()).size());
    }
}
