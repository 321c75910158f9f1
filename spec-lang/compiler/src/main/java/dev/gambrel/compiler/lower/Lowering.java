package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.origin.Origins;
import dev.gambrel.compiler.origin.WrittenLines;
import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.revision.Revisions;
import dev.gambrel.compiler.revision.Revisions.Revised;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.compiler.syntax.SpecFile;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.FirstFindings;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.rules.TreeRules;
import java.util.ArrayList;
import java.util.List;

/** From a text to a tree that keeps every rule, or to findings. */
public final class Lowering {
    /**
     * Makes an answer of a specification that was read without error.
     *
     * @param <T> the kind of answer
     */
    public interface Answer<T> {
        /**
         * Makes it.
         *
         * @param tree the tree
         * @param texts all texts that it was read from
         * @param lines the lines that the tree was made from
         * @return the answer
         */
        T of(CutTree tree, List<SourceText> texts, WrittenLines lines);
    }

    private Lowering() {}

    /**
     * Reads a text and what it uses, and makes the tree.
     *
     * @param text the specification
     * @param sources where the files that it uses are found
     * @param limits how much is taken
     * @param whenSound makes the answer
     * @param <T> the kind of answer
     * @return the answer, or what is wrong
     */
    public static <T> Result<T> compile(SourceText text, Sources sources, Limits limits, Answer<T> whenSound) {
        FirstFindings reading = new FirstFindings();
        UseLoader loader = new UseLoader(new SpecParser(limits), sources, limits, reading);
        List<SpecFile> files = loader.load(text);
        List<SourceText> texts = files.stream().map(SpecFile::text).toList();
        List<Diagnostic> found = new ArrayList<>(reading.list());
        if (loader.isTooMuch() || loader.lacksRevised() || found.stream().anyMatch(Lowering::isRefusal)) {
            return Result.failed(FindingOrder.sort(found, texts));
        }
        FirstFindings meaning = new FirstFindings();
        Doubt doubt = new Doubt();
        Revised revised = Revisions.apply(files, loader.texts(), meaning, doubt::aboutSomethingIn);
        Program program = new Program(revised.files(), loader.texts(), meaning);
        TreeLowering lowering = new TreeLowering(program, doubt);
        CutTree tree = lowering.tree();
        List<Diagnostic> broken = TreeRules.check(tree, limits, doubt.paths());
        if (!broken.isEmpty()) {
            Origins origins = new Origins(tree, lowering.lines(revised.earlier()));
            broken.stream()
                    .filter(finding -> !doubt.follows(finding))
                    .forEach(finding -> meaning.accept(finding.at(origins::written)));
        }
        found.addAll(new Consequences(found, program, loader.isIncomplete()).without(meaning.list()));
        List<Diagnostic> sorted = FindingOrder.sort(found, texts);
        return Result.hasError(sorted)
                ? Result.failed(sorted)
                : Result.of(whenSound.of(tree, texts, lowering.lines(revised.earlier())), sorted);
    }

    /** A file that was not read at all: nothing can be said of what it means. */
    private static boolean isRefusal(Diagnostic finding) {
        return finding.code() == SyntaxCode.TOO_DEEP || finding.code() == FileCode.TOO_MANY_LINES;
    }
}
