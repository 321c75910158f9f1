package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.source.Texts;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.SpecFile;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Lays each file that revises another over what it revises. What comes of it is the same as if the whole were written out,
 * save that every word still knows where it stands.
 *
 * <p>A line of the revision changes the line of the same keyword and name, and of that only what it names. Costs O(lines).
 */
public final class Revisions {
    /**
     * Files with nothing left to revise.
     *
     * @param files what is read before what reads it; a revised file keeps only its first line, the revising one holds all
     * @param earlier for the place of each clause that a revision wrote the place of the one that it replaced
     */
    public record Revised(List<SpecFile> files, Map<Span, Span> earlier) {
        /** Copies both. */
        public Revised {
            files = List.copyOf(files);
            earlier = Map.copyOf(earlier);
        }
    }

    private final Texts texts;
    private final Consumer<Diagnostic> found;
    private final Consumer<TreePath> unsure;
    private final Map<Span, Span> earlier = new HashMap<>();

    private Revisions(Texts texts, Consumer<Diagnostic> found, Consumer<TreePath> unsure) {
        this.texts = texts;
        this.found = found;
        this.unsure = unsure;
    }

    /**
     * Applies every revision among some files.
     *
     * @param files what is read before what reads it
     * @param texts their texts
     * @param found takes what cannot be applied
     * @param unsure takes the cuts of which nothing may be concluded after such a finding
     * @return the files as if written out
     */
    public static Revised apply(
            List<SpecFile> files, Texts texts, Consumer<Diagnostic> found, Consumer<TreePath> unsure) {
        Revisions revisions = new Revisions(texts, found, unsure);
        List<SpecFile> applied = new ArrayList<>();
        for (SpecFile file : files) {
            Optional<Declaration> revises = revisesLine(file);
            if (revises.isPresent()) {
                applied = revisions.lay(file, revises.get(), applied);
            } else {
                StrayChanges.report(file.statements(), revisions.report(file));
                applied.add(file);
            }
        }
        return new Revised(applied, revisions.earlier);
    }

    private static Optional<Declaration> revisesLine(SpecFile file) {
        return file.statements().stream()
                .filter(statement -> statement instanceof Declaration)
                .map(Declaration.class::cast)
                .filter(line -> line.keyword() == Keyword.REVISES_LINE)
                .findFirst();
    }

    private FileReport report(SpecFile file) {
        return new FileReport(texts, file.text(), file.start(), found);
    }

    private List<SpecFile> lay(SpecFile file, Declaration revises, List<SpecFile> before) {
        FileReport report = report(file);
        List<Statement> heads = new ArrayList<>();
        List<Statement> lines = new ArrayList<>();
        List<SpecFile> emptied = new ArrayList<>();
        for (SpecFile each : before) {
            List<Statement> head =
                    each.statements().stream().filter(Revisions::isHead).toList();
            emptied.add(new SpecFile(each.text(), each.start(), head));
            each.statements().stream().filter(line -> !isHead(line)).forEach(lines::add);
        }
        List<Statement> changes = new ArrayList<>();
        file.statements().forEach(line -> (isHead(line) ? heads : changes).add(line));
        RevisionNumber.check(lines, revises, changes, report);
        StrayChanges.reportWithinAdded(changes, report);
        heads.addAll(new BodyRevision(report, earlier, unsure).revise(lines, changes, TreePath.ROOT));
        emptied.add(new SpecFile(file.text(), file.start(), heads));
        return emptied;
    }

    /** Lines that are about the file and not about what it says. */
    private static boolean isHead(Statement statement) {
        return statement instanceof Declaration line
                && (line.keyword() == Keyword.LANGUAGE_LINE
                        || line.keyword() == Keyword.USE_LINE
                        || line.keyword() == Keyword.REVISES_LINE);
    }
}
