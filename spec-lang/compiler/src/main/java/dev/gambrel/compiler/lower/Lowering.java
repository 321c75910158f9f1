package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.compiler.syntax.SpecFile;
import dev.gambrel.diagnostic.Argument;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.rules.TreeCode;
import dev.gambrel.tree.rules.TreeRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** From a text to a tree that keeps every rule, or to findings. */
public final class Lowering {
    private Lowering() {}

    /**
     * Reads a text and what it uses, and makes the tree.
     *
     * @param text the specification
     * @param sources where the files that it uses are found
     * @param limits how much is taken
     * @return the tree with its texts, or what is wrong
     */
    public static Result<Compilation> compile(SourceText text, Sources sources, Limits limits) {
        List<Diagnostic> found = new ArrayList<>();
        UseLoader loader = new UseLoader(new SpecParser(limits), sources, limits, found::add);
        List<SpecFile> files = loader.load(text);
        List<SourceText> texts = files.stream().map(SpecFile::text).toList();
        if (loader.isTooMuch()) {
            return Result.failed(FindingOrder.sort(found, texts));
        }
        Predicate<Diagnostic> news = finding -> !(loader.isIncomplete() && speaksOfAbsence(finding));
        Program program = new Program(files, finding -> {
            if (news.test(finding)) {
                found.add(finding);
            }
        });
        Doubt doubt = new Doubt();
        TreeLowering lowering = new TreeLowering(program, doubt);
        CutTree tree = lowering.tree();
        List<Diagnostic> broken = TreeRules.check(tree, limits, doubt.paths());
        if (!broken.isEmpty()) {
            Origins origins = new Origins(program, lowering.stepLines());
            broken.stream()
                    .filter(finding -> news.test(finding) && !followsFromUnreadableLine(finding, program))
                    .map(finding -> finding.at(origins::written))
                    .forEach(found::add);
        }
        List<Diagnostic> sorted = FindingOrder.sort(found, texts);
        return Result.hasError(sorted) ? Result.failed(sorted) : Result.of(new Compilation(tree, texts), sorted);
    }

    /** Where a used file is missing, what it may have declared is not missing too. */
    private static boolean speaksOfAbsence(Diagnostic finding) {
        return finding.code() == MeaningCode.UNKNOWN_SPECIES
                || finding.code() == MeaningCode.NO_SPECIFICATION
                || finding.code() == MeaningCode.NO_CARCASS
                || finding.code() == MeaningCode.NO_CUTS
                || finding.code() == TreeCode.UNKNOWN_STREAM
                || finding.code() == TreeCode.UNKNOWN_SOURCE;
    }

    /** A stream or source is not unknown if a line that could not be read speaks of it. */
    private static boolean followsFromUnreadableLine(Diagnostic finding, Program program) {
        boolean names = finding.code() == TreeCode.UNKNOWN_STREAM || finding.code() == TreeCode.UNKNOWN_SOURCE;
        if (!names || program.unreadable().isEmpty()) {
            return false;
        }
        Argument name = finding.arguments().get(0);
        String wanted = name.shown().toLowerCase(Locale.ROOT);
        return program.unreadable().stream()
                .anyMatch(line -> line.toLowerCase(Locale.ROOT).contains(wanted));
    }
}
