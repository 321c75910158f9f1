package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.code.RevisionCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.compiler.source.Texts;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.SpecFile;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Reads a file and all that it uses, each once, what is used before what uses it. */
final class UseLoader {
    /** What a line says beyond so many clauses is counted like lines of its own. */
    private static final int ORDINARY_CLAUSES = 50;

    private final SpecParser parser;
    private final Sources sources;
    private final Limits limits;
    private final Consumer<Diagnostic> found;
    private final Texts texts = new Texts();
    private final Map<String, SpecFile> loaded = new LinkedHashMap<>();
    private final Set<String> beingRead = new LinkedHashSet<>();
    private long statements;
    private long characters;
    private boolean incomplete;
    private boolean lacksRevised;

    UseLoader(SpecParser parser, Sources sources, Limits limits, Consumer<Diagnostic> found) {
        this.parser = parser;
        this.sources = sources;
        this.limits = limits;
        this.found = found;
    }

    List<SpecFile> load(SourceText main) {
        read(main, true);
        return new ArrayList<>(loaded.values());
    }

    /** A file that is only taken in may not revise another. */
    private void read(SourceText text, boolean mayRevise) {
        beingRead.add(text.name());
        if (text.text().length() > limits.textBytes()) {
            found.accept(Diagnostic.of(FileCode.TOO_LARGE, new Place.InFile(text.name()))
                    .with("file", text.name())
                    .with("found", text.text().length())
                    .with("allowed", limits.textBytes())
                    .help("A specification is text; look whether this is the right file."));
            incomplete = true;
            beingRead.remove(text.name());
            loaded.put(text.name(), new SpecFile(text, texts.add(text), List.of()));
            return;
        }
        SpecFile file = parser.parse(text, texts, found);
        FileReport report = new FileReport(texts, text, file.start(), found);
        long before = statements;
        statements += count(file.statements());
        if (statements > limits.declarations() && before <= limits.declarations()) {
            found.accept(Diagnostic.of(FileCode.TOO_MANY_LINES, new Place.InFile(text.name()))
                    .with("allowed", limits.declarations())
                    .help("Divide the specification into several."));
        }
        List<Declaration> revising = new ArrayList<>();
        for (Statement statement : file.statements()) {
            if (statement instanceof Declaration line && line.keyword() == Keyword.REVISES_LINE) {
                revising.add(line);
                revise(line, revising.get(0), mayRevise, report);
            } else if (statement instanceof Declaration line && line.keyword() == Keyword.USE_LINE) {
                use(line, report);
            }
        }
        beingRead.remove(text.name());
        loaded.put(text.name(), file);
    }

    /** Whether so much was read that nothing should be made of it. */
    boolean isTooMuch() {
        return statements > limits.declarations();
    }

    /** Whether something that was to be used is missing, so that what it may have declared is not unknown. */
    boolean isIncomplete() {
        return incomplete;
    }

    /** All texts that were read. */
    Texts texts() {
        return texts;
    }

    /** Whether what is to be revised is missing, so that nothing can be said of the whole. */
    boolean lacksRevised() {
        return lacksRevised;
    }

    private static long count(List<Statement> statements) {
        long count = statements.size();
        for (Statement statement : statements) {
            if (statement instanceof Declaration line) {
                count += Math.max(0, line.names().size() - 1)
                        + Math.max(0, line.clauses().size() - ORDINARY_CLAUSES)
                        + count(line.body());
            } else if (statement instanceof Statement.Unknown unknown) {
                count += count(unknown.body());
            }
        }
        return count;
    }

    private void revise(Declaration line, Declaration first, boolean allowed, FileReport report) {
        if (line != first) {
            lacksRevised = true;
            report.add(report.finding(MeaningCode.DECLARED_TWICE, line.keywordSpan())
                    .with("line", line.keyword().word())
                    .related(report.at(first.keywordSpan()), "the first one")
                    .help("A revision revises one file; keep one of the two."));
            return;
        }
        if (!allowed) {
            lacksRevised = true;
            report.add(report.finding(RevisionCode.USED_REVISION, line.keywordSpan())
                    .help("Name the revision itself in the revises line of the file that uses it."));
            return;
        }
        lacksRevised |= line.damaged();
        for (Clause clause : line.clauses()) {
            if (clause instanceof Clause.Text name) {
                useFile(name, true, report);
                lacksRevised |= incomplete;
            }
        }
    }

    private void use(Declaration line, FileReport report) {
        incomplete |= line.damaged();
        for (Clause clause : line.clauses()) {
            if (clause instanceof Clause.Text name) {
                if (name.text().startsWith(Catalogue.PREFIX)) {
                    useCatalogue(name, report);
                } else {
                    useFile(name, false, report);
                }
            }
        }
    }

    private void useCatalogue(Clause.Text name, FileReport report) {
        String wanted = name.text().substring(Catalogue.PREFIX.length()).strip();
        TradeName species = TradeName.isAcceptable(wanted) ? TradeName.of(wanted) : TradeName.of("such species");
        Catalogue.text(species)
                .ifPresentOrElse(
                        text -> follow(text, name, false, report), () -> refuse(notInCatalogue(species, name, report)));
    }

    private static Diagnostic notInCatalogue(TradeName species, Clause.Text name, FileReport report) {
        Diagnostic finding =
                report.finding(FileCode.NOT_IN_CATALOGUE, name.span()).with("species", species);
        return NearestName.of(species, Catalogue.names())
                .map(near -> finding.help("Did you mean “" + Catalogue.PREFIX + near + "”?"))
                .orElse(finding)
                .help("The catalogue has: " + String.join(", ", catalogueNames()) + ".");
    }

    private static List<String> catalogueNames() {
        return Catalogue.names().stream().map(TradeName::text).toList();
    }

    private void useFile(Clause.Text name, boolean mayRevise, FileReport report) {
        if (isTooMuch()) {
            return;
        }
        if (characters > (long) limits.files() * limits.textBytes()) {
            refuse(tooManyFiles(name, report).note("What was looked into is as much text as so many full files."));
            return;
        }
        Found answer = sources.find(name.text(), report.text().name());
        characters += lookedInto(answer);
        if (answer instanceof Found.Text text) {
            follow(text.text(), name, mayRevise, report);
        } else if (answer instanceof Found.Refused refused) {
            refuse(refusal(refused, name, report));
        }
    }

    /** What is asked for again is read again, and so is counted again; of what is not text it is not known how much was read. */
    private long lookedInto(Found answer) {
        if (answer instanceof Found.Text text) {
            return text.text().text().length();
        }
        return ((Found.Refused) answer).code() == FileCode.NOT_TEXT ? limits.textBytes() : 0;
    }

    private Diagnostic tooManyFiles(Clause.Text name, FileReport report) {
        return report.finding(FileCode.TOO_MANY_FILES, name.span())
                .with("allowed", limits.files())
                .help("Put several small files together.");
    }

    private void refuse(Diagnostic finding) {
        incomplete = true;
        found.accept(finding);
    }

    private void follow(SourceText text, Clause.Text name, boolean mayRevise, FileReport report) {
        if (beingRead.contains(text.name())) {
            refuse(report.finding(FileCode.CIRCULAR, name.span())
                    .with("file", name.text())
                    .note("It goes round: " + String.join(" uses ", beingRead) + " uses " + text.name() + ".")
                    .help("Move what both need into a file of its own, and use that."));
        } else if (!loaded.containsKey(text.name()) && !isTooMuch()) {
            if (beingRead.size() >= limits.useDepth()) {
                refuse(report.finding(FileCode.TOO_DEEP, name.span())
                        .with("found", beingRead.size() + 1L)
                        .with("allowed", limits.useDepth())
                        .help("Use the file from nearer the top."));
            } else if (loaded.size() + beingRead.size() >= limits.files()) {
                refuse(tooManyFiles(name, report));
            } else {
                read(text, mayRevise);
            }
        }
    }

    private Diagnostic refusal(Found.Refused refused, Clause.Text name, FileReport report) {
        Diagnostic finding = report.finding(refused.code(), name.span())
                .with("file", name.text())
                .with("found", refused.count())
                .with("allowed", limits.textBytes());
        return switch (refused.code()) {
            case OUTSIDE ->
                finding.help(
                        "Copy the file into the folder of the specification, and use it by its name with forward slashes.");
            case MISSING -> finding.help("Write the file's name as it is, .cuts included.");
            case NOT_TEXT -> finding.help("Save it as plain text in UTF-8.");
            default -> finding.help("Look at the file, and at who may read it.");
        };
    }
}
