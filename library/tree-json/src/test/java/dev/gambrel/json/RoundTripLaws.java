package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.trees.CutTrees;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

class RoundTripLaws {
    private static final Limits WIDE = new Limits(1 << 24, 100, 50, 8, 20_000, 50_000, 50);

    @Provide
    Arbitrary<CutTree> trees() {
        return CutTrees.any();
    }

    private static Result<CutTree> read(String json) {
        return TreeJsonReader.readUnchecked(new SourceText("tree.json", json), WIDE);
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void a_tree_that_is_written_and_read_is_the_same_tree(@ForAll("trees") CutTree tree) {
        Result<CutTree> read = read(TreeJsonWriter.write(tree));
        assertEquals(List.of(), read.diagnostics());
        assertEquals(tree, read.orElseThrow());
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void what_is_read_is_written_with_the_same_bytes(@ForAll("trees") CutTree tree) {
        String json = TreeJsonWriter.write(tree);
        byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
        assertEquals(json, new String(bytes, StandardCharsets.UTF_8));
        assertEquals(json, TreeJsonWriter.write(read(json).orElseThrow()));
    }
}
