package dev.gambrel.json;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.LocatedParser;
import dev.gambrel.json.located.Readings;
import dev.gambrel.json.located.Refused;
import dev.gambrel.json.located.Utf8;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.rules.TreeRules;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * Reads a cut tree from JSON that anybody may have sent.
 *
 * <p>Every fault of a file is found in one run and underlined in its text; nothing is thrown, whatever the file holds.
 * A tree that could be read is then held against the same rules as a specification in words, and their findings are
 * placed in the file too. Costs O(length of the file), and no more memory than that.
 */
public final class TreeJsonReader {
    private TreeJsonReader() {}

    /**
     * Reads a file's bytes within the usual limits.
     *
     * @param name the file's name for people
     * @param bytes the whole file, in UTF-8, with or without a byte order mark
     * @return the tree, or the findings of {@link JsonCode} and of the rules
     */
    public static Result<CutTree> read(String name, byte[] bytes) {
        return read(name, bytes, Limits.DEFAULT);
    }

    /**
     * Reads a file's bytes.
     *
     * @param name the file's name for people
     * @param bytes the whole file, in UTF-8, with or without a byte order mark
     * @param limits how much is read; brackets stand twice as deep as cuts may, and never more than 250
     * @return the tree, or the findings of {@link JsonCode} and of the rules
     */
    public static Result<CutTree> read(String name, byte[] bytes, Limits limits) {
        try {
            return read(Utf8.decode(name, bytes, limits), limits);
        } catch (Refused refused) {
            return Result.failed(List.of(refused.finding()));
        }
    }

    /**
     * Reads a file's bytes within the usual limits, and keeps where everything is written.
     *
     * @param name the file's name for people
     * @param bytes the whole file, in UTF-8, with or without a byte order mark
     * @return the tree with its places, or the findings of {@link JsonCode} and of the rules
     */
    public static Result<PlacedTree> readPlaced(String name, byte[] bytes) {
        try {
            Limits limits = Limits.DEFAULT;
            return read(Utf8.decode(name, bytes, limits), limits, (tree, places) -> {
                Result<CutTree> checked = withRules(tree, places, limits);
                return new Result<>(
                        checked.value().map(sound -> new PlacedTree(sound, places::written)), checked.diagnostics());
            });
        } catch (Refused refused) {
            return Result.failed(List.of(refused.finding()));
        }
    }

    /**
     * Reads a text.
     *
     * @param text the whole text
     * @param limits how much is read; brackets stand twice as deep as cuts may, and never more than 250
     * @return the tree, or the findings of {@link JsonCode} and of the rules
     */
    public static Result<CutTree> read(SourceText text, Limits limits) {
        return read(text, limits, (tree, places) -> withRules(tree, places, limits));
    }

    /** Reads a text and asks no rules. */
    static Result<CutTree> readUnchecked(SourceText text, Limits limits) {
        return read(text, limits, (tree, places) -> Result.of(tree, List.of()));
    }

    private static <T> Result<T> read(
            SourceText text, Limits limits, BiFunction<CutTree, PartPlaces, Result<T>> whenRead) {
        Findings findings = new Findings(text);
        try {
            Located file = LocatedParser.parse(text, findings, limits);
            CutTree tree = Readings.object(TreeReader::file).read(file, findings);
            if (findings.isEmpty()) {
                return whenRead.apply(tree, new PartPlaces(text, file));
            }
        } catch (Refused refused) {
            findings.add(refused.finding());
        }
        return Result.failed(findings.inOrder());
    }

    private static Result<CutTree> withRules(CutTree tree, PartPlaces places, Limits limits) {
        List<Diagnostic> broken = TreeRules.check(tree, limits, Set.of()).stream()
                .map(finding -> finding.at(places::written))
                .toList();
        return Result.hasError(broken) ? Result.failed(broken) : Result.of(tree, broken);
    }
}
