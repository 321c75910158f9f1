package dev.gambrel.benchmarks;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;

/**
 * One cutting sheet in the three languages that are compared.
 *
 * <p>The content is the same: the YAML and the Smithy model are written from the tree that the specification leads to, every
 * cut, part, share, spread, source, home, separation, portion and note with it; the heads (streams, sources, species) are
 * written by hand once in each language. Each is written as its users would, so the lengths differ.
 *
 * <p>The checks are as strict as each peer's own means allow: required and unexpected fields, kinds, ranges of shares,
 * units, and the closed lists of streams, sources, bones and glands, which the peers must know beforehand, where the
 * specification declares them. Neither peer adds up shares, follows bones, compares with print or places a finding in the
 * tree, and the YAML is left as nodes, not made into records; so the peers do less than what they are compared with.
 *
 * @param text the specification
 * @param tree what it means
 * @param yaml the same for {@link YamlReading}
 * @param smithy the same for {@link SmithyReading}
 */
record Sheet(SourceText text, CutTree tree, String yaml, String smithy) {
    /**
     * A sheet of a size.
     *
     * @param parts how many cuts, bones, trims, losses and rests
     * @return the sheet
     * @throws IllegalStateException if the specification leads to any finding
     */
    static Sheet of(int parts) {
        SourceText text = new SourceText("sheet.cuts", SpecText.of(parts));
        Result<Compilation> result = new SpecCompiler().compile(text, Sources.none());
        if (!result.diagnostics().isEmpty()) {
            throw new IllegalStateException("not a sound specification: " + result.diagnostics());
        }
        CutTree tree = result.orElseThrow().tree();
        return new Sheet(text, tree, YamlText.of(tree), SmithyText.of(tree));
    }
}
