package dev.gambrel.compiler.restate;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.code.RestateCode;
import dev.gambrel.compiler.origin.Origins;
import dev.gambrel.compiler.origin.ShareLine;
import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts new shares into the text of a specification. Only numbers change that are to be others, and what their lines cite; comments, order,
 * spacing and line ends stay. The edited text is compiled, and offered only if it is free of errors, says nothing else anew, and every cut
 * still closes to exactly 100 %. Nothing is written.
 *
 * <p>The number of the revision stays: who issues the sheet raises it, and weigh sheets name the revision that they were cut by.
 */
public final class ShareRestater {
    private final Limits limits;
    private final Compilation compilation;
    private final Sources sources;
    private final Origins origins;
    private final Map<SourceText, List<TextEdit>> edits = new LinkedHashMap<>();
    private final List<Diagnostic> findings = new ArrayList<>();
    private final List<RestatedCut> restated = new ArrayList<>();

    private ShareRestater(Compilation compilation, Sources sources, Limits limits) {
        this.limits = limits;
        this.compilation = compilation;
        this.sources = sources;
        this.origins = compilation.origins();
    }

    /**
     * Edits a specification.
     *
     * @param compilation the specification as it is
     * @param sources where the files that it uses are found
     * @param limits how much is taken
     * @param cuts the cuts whose shares are known anew
     * @return the files that would change, with the cuts that were left alone and why, and warnings that the new shares bring up; or what
     *     stands against all of it
     */
    public static Result<Restatement> restate(
            Compilation compilation, Sources sources, Limits limits, List<RestatedCut> cuts) {
        return new ShareRestater(compilation, sources, limits).restate(cuts);
    }

    private Result<Restatement> restate(List<RestatedCut> cuts) {
        SourceText main = main();
        if (isRevision(main)) {
            return Result.failed(List.of(Diagnostic.of(RestateCode.OF_REVISION, new Place.InFile(main.name()))
                    .help("Write the new shares into the revision by hand; each says who gives way.")));
        }
        cuts.forEach(this::edit);
        if (edits.isEmpty()) {
            return Result.of(new Restatement(List.of(), List.of()), findings);
        }
        List<Source> declared = declare(main);
        List<RestatedText> texts = edits.entrySet().stream()
                .map(file -> RestatedText.of(file.getKey(), inOrder(file.getValue())))
                .toList();
        return proven(main, texts, declared);
    }

    private SourceText main() {
        return compilation.texts().get(compilation.texts().size() - 1);
    }

    private boolean isRevision(SourceText main) {
        return new SpecParser(limits)
                .parse(main, found -> {}).statements().stream()
                        .anyMatch(line ->
                                line instanceof Declaration declared && declared.keyword() == Keyword.REVISES_LINE);
    }

    private static List<TextEdit> inOrder(List<TextEdit> edits) {
        return edits.stream()
                .sorted(Comparator.comparingInt(TextEdit::start).thenComparingInt(TextEdit::end))
                .toList();
    }

    private void edit(RestatedCut cut) {
        Map<SourceText, List<TextEdit>> ofCut = new LinkedHashMap<>();
        for (RestatedShare part : cut.parts()) {
            Optional<ShareLine> line = origins.shareLine(part.part());
            String against = line.map(ShareRestater::against).orElse("has no line of its own");
            if (!against.isEmpty()) {
                findings.add(notRestated(cut, part, line, against));
                return;
            }
            List<TextEdit> ofLine =
                    ShareEdits.of(line.orElseThrow(), part, cut.source().name());
            if (!ofLine.isEmpty()) {
                ofCut.computeIfAbsent(line.orElseThrow().text(), any -> new ArrayList<>())
                        .addAll(ofLine);
            }
        }
        if (!ofCut.isEmpty()) {
            restated.add(cut);
            ofCut.forEach((text, added) ->
                    edits.computeIfAbsent(text, any -> new ArrayList<>()).addAll(added));
        }
    }

    /** Why a line cannot take another figure; empty where it can. */
    private static String against(ShareLine line) {
        if (line.share() instanceof ShareLine.Estimated) {
            return "is estimated by an equation";
        } else if (line.share() instanceof ShareLine.NotWritten) {
            return "states no share";
        } else if (line.sources().size() > 1) {
            return "cites several sources, and which of them no longer holds cannot be told";
        }
        return line.text().name().startsWith(Catalogue.PREFIX) ? "stands in the catalogue" : "";
    }

    private Diagnostic notRestated(RestatedCut cut, RestatedShare part, Optional<ShareLine> line, String why) {
        Place place = line.<Place>map(written -> new Place.InText(written.text(), written.head()))
                .orElse(new Place.InFile(main().name()));
        return Diagnostic.of(RestateCode.CUT_NOT_RESTATED, place)
                .with(
                        "cut",
                        cut.cut().equals(TreePath.ROOT)
                                ? "the carcass"
                                : cut.cut().toString())
                .with("part", part.part().last())
                .with("why", why)
                .help("Write " + part.percent().toPlainString()
                        + " % yourself, and the other shares of the cut with it.");
    }

    /** Sources that are cited and not declared yet, each in a line of its own after those that are. */
    private List<Source> declare(SourceText main) {
        List<Source> declared = restated.stream()
                .map(RestatedCut::source)
                .distinct()
                .filter(source -> !compilation.tree().sources().contains(source))
                .toList();
        int at = origins.endOfSources(main).orElse(main.text().length());
        String lineEnd = main.text().contains("\r\n") ? "\r\n" : "\n";
        StringBuilder lines = new StringBuilder();
        declared.forEach(source -> lines.append(lineEnd).append(SourceLine.of(source)));
        if (!declared.isEmpty()) {
            edits.computeIfAbsent(main, any -> new ArrayList<>()).add(new TextEdit(at, at, lines.toString()));
        }
        return declared;
    }

    private Result<Restatement> proven(SourceText main, List<RestatedText> texts, List<Source> declared) {
        SourceText after = texts.stream()
                .filter(text -> text.before().equals(main))
                .map(RestatedText::after)
                .findFirst()
                .orElse(main);
        Result<Compilation> result =
                new SpecCompiler(limits).compile(after, (name, user) -> edited(sources.find(name, user), texts));
        Optional<String> fault = result.value().isEmpty()
                ? result.diagnostics().stream()
                        .filter(found -> found.severity() == Severity.ERROR)
                        .map(Diagnostic::message)
                        .findFirst()
                : new RestatedProof(compilation.tree(), result.value().get().tree()).fault(restated, declared);
        if (fault.isPresent()) {
            findings.add(Diagnostic.of(RestateCode.WITH_ERRORS, new Place.InFile(main.name()))
                    .with("why", fault.get())
                    .help("Nothing is offered. Write the shares yourself, and check the specification."));
            return Result.failed(findings);
        }
        return Result.of(
                new Restatement(texts, restated.stream().map(RestatedCut::cut).toList()), findings);
    }

    private static Found edited(Found found, List<RestatedText> texts) {
        return found instanceof Found.Text read
                ? texts.stream()
                        .filter(text -> text.before().equals(read.text()))
                        .findFirst()
                        .<Found>map(text -> new Found.Text(text.after()))
                        .orElse(found)
                : found;
    }
}
