package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.format.SpecFormatter;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.comparison.Change;
import dev.gambrel.yields.comparison.Comparison;
import dev.gambrel.yields.comparison.Effect;
import dev.gambrel.yields.comparison.Said;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Specifications differ by what they mean, and by nothing else. */
class ComparisonLaws {
    @Provide
    Arbitrary<Path> files() {
        return Arbitraries.of(Specifications.valid());
    }

    private static final Map<Path, CutTree> TREES = Specifications.valid().stream()
            .collect(Collectors.toMap(
                    file -> file,
                    file -> Specifications.compile(file).orElseThrow().tree()));

    private static CutTree tree(Path file) {
        return TREES.get(file);
    }

    private static void same(CutTree one, CutTree other, Path file) {
        assertEquals(List.of(), Comparison.of(one, other).changes(), file.toString());
    }

    @Example
    void a_specification_does_not_differ_from_itself() {
        Specifications.valid().forEach(file -> same(tree(file), tree(file), file));
    }

    @Property(tries = 300)
    void moving_lines_is_no_difference(@ForAll("files") Path file, @ForAll long seed) {
        String moved = Lines.shuffled(Lines.of(Specifications.text(file)), new Random(seed));
        same(tree(file), Specifications.compile(file, moved).orElseThrow().tree(), file);
    }

    @Example
    void laying_out_is_no_difference() {
        for (Path file : Specifications.valid()) {
            String laidOut = new SpecFormatter()
                    .format(new SourceText(file.getFileName().toString(), Specifications.text(file)))
                    .orElseThrow();
            same(tree(file), Specifications.compile(file, laidOut).orElseThrow().tree(), file);
        }
    }

    @Example
    void sending_it_as_json_is_no_difference() {
        for (Path file : Specifications.valid()) {
            CutTree tree = tree(file);
            byte[] sent = TreeJsonWriter.write(tree).getBytes(StandardCharsets.UTF_8);
            same(tree, TreeJsonReader.read("sent.json", sent).orElseThrow(), file);
        }
    }

    /** A change without its effect, and what it does. */
    private static Map<List<Object>, Effect> effects(Comparison comparison, boolean back) {
        Map<List<Object>, Effect> effects = new HashMap<>();
        for (Change change : comparison.changes()) {
            List<Object> what =
                    List.of(change.what(), back ? change.is() : change.was(), back ? change.was() : change.is());
            effects.put(what, back ? undone(change) : change.effect());
        }
        return effects;
    }

    private static Effect undone(Change change) {
        boolean isGone = !(change.is() instanceof Said.Stated);
        return switch (change.effect()) {
            case TIGHTENS -> Effect.LOOSENS;
            case LOOSENS -> Effect.TIGHTENS;
            case ADDS -> Effect.BREAKS;
            case BREAKS -> isGone ? Effect.ADDS : Effect.BREAKS;
            default -> change.effect();
        };
    }

    @Property(tries = 500)
    void taking_a_revision_back_undoes_it(@ForAll("files") Path one, @ForAll("files") Path other) {
        CutTree before = tree(one);
        CutTree after = tree(other);
        assertEquals(
                effects(Comparison.of(before, after), false),
                effects(Comparison.of(after, before), true),
                one + " " + other);
    }
}
