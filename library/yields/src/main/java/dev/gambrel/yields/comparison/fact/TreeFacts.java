package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Stream;
import dev.gambrel.yields.comparison.fact.Stated.Family;
import java.util.ArrayList;
import java.util.List;

/** A whole tree as what is stated in it. */
public final class TreeFacts {
    private static final TradeName CARCASS = TradeName.of("carcass");

    private TreeFacts() {}

    /**
     * Reads a tree once, O(what is written in it).
     *
     * @param tree any tree
     * @return the carcass, and in it all that is stated of anything
     */
    public static Stated of(CutTree tree) {
        List<Stated> below = new ArrayList<>();
        below.add(SpeciesFacts.of(tree.species()));
        for (int i = 0; i < tree.streams().size(); i++) {
            below.add(stream(tree.streams().get(i), i));
        }
        below.addAll(PartFacts.of(tree.parts(), TreePath.ROOT));
        Facts facts = new Facts();
        SpecificationFacts.add(tree, facts);
        CarcassFacts.add(tree.carcass(), facts);
        EstimateFacts.add(tree.carcass().predictors(), facts);
        return new Stated(
                Family.CARCASS,
                CARCASS,
                TreePath.ROOT,
                PartFacts.identity("carcass", "carcass"),
                facts.all(),
                below,
                List.of());
    }

    private static Stated stream(Stream stream, int index) {
        Facts facts = new Facts();
        facts.reliedOn(
                "what becomes of it",
                Aspect.STREAM,
                index,
                List.of(stream.kind().words()),
                stream.kind().words());
        LimitFacts.lean(stream.lean(), index, facts);
        LimitFacts.onlyFrom(stream.onlyFrom(), index, facts);
        Fact identity = new Fact(
                "stream",
                Aspect.STREAM,
                index,
                new Meaning.ReliedOn(List.of("stream"), List.of()),
                "stream, " + stream.kind().words(),
                List.of());
        return new Stated(Family.STREAM, stream.name(), TreePath.ROOT, identity, facts.all(), List.of(), List.of());
    }
}
