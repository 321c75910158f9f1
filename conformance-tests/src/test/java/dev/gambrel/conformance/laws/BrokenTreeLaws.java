package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.rules.TreeRules;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Example;

/** A tree gets the same rules however it was made: by hand, or from what a buyer sent. */
class BrokenTreeLaws {
    private static final Limits LONG_TEXT = new Limits(1 << 24, 100, 50, 8, 20_000, 50_000, 50);
    private static final Set<TreeCode> TOO_MUCH = EnumSet.of(TreeCode.TOO_DEEP, TreeCode.TOO_MANY_PARTS);
    private static final Map<TreeCode, CutTree> BROKEN = BrokenTrees.all();

    @Example
    void every_rule_can_be_broken() {
        assertEquals(EnumSet.allOf(TreeCode.class), BROKEN.keySet());
    }

    @Example
    void a_tree_made_by_hand_is_told_what_is_wrong_with_it() {
        BROKEN.forEach((code, tree) -> {
            List<String> found = TreeRules.check(tree).stream()
                    .map(finding -> finding.code().id())
                    .toList();
            assertTrue(found.contains(code.id()), () -> code + " is not among " + found);
        });
    }

    @Example
    void sent_as_json_it_is_told_the_same_of_the_same_parts() {
        BROKEN.forEach((code, tree) -> {
            if (!TOO_MUCH.contains(code)) {
                List<Diagnostic> found = sent(tree);
                assertEquals(told(TreeRules.check(tree)), told(found), code::id);
                found.forEach(finding -> assertTrue(finding.place() instanceof Place.Written, code::id));
            }
        });
    }

    @Example
    void what_is_too_much_is_refused_before_there_is_a_tree() {
        TOO_MUCH.forEach(code -> assertTrue(Result.hasError(sent(BROKEN.get(code))), code::id));
    }

    private static List<Diagnostic> sent(CutTree tree) {
        return TreeJsonReader.read(new SourceText("sent.json", TreeJsonWriter.write(tree)), LONG_TEXT)
                .diagnostics();
    }

    private static List<String> told(List<Diagnostic> findings) {
        return findings.stream()
                .map(finding -> finding.code().id() + " " + address(finding.place()))
                .toList();
    }

    private static String address(Place place) {
        return place instanceof Place.Written written ? written.tree().toString() : place.toString();
    }
}
