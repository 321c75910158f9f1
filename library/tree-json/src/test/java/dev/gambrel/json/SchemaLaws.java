package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.json.trees.CutTrees;
import dev.gambrel.tree.CutTree;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

class SchemaLaws {
    @Provide
    Arbitrary<CutTree> trees() {
        return CutTrees.any();
    }

    @Property(tries = 100, shrinking = ShrinkingMode.OFF)
    void whatever_is_written_keeps_the_published_schema(@ForAll("trees") CutTree tree) {
        assertEquals(List.of(), Schema.faults(TreeJsonWriter.write(tree)));
    }
}
