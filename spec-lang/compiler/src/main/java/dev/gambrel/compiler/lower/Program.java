package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.source.Texts;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Container;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.SpecFile;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.NearestName;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** The lines at the top of all files together, by keyword, in the order read. */
final class Program {
    private static final String LANGUAGE_VERSION = "1";

    private final Map<Keyword, List<Located>> lines = new EnumMap<>(Keyword.class);
    private final List<Located> parts = new ArrayList<>();
    private final List<Located> terms = new ArrayList<>();
    private final List<Located> titles = new ArrayList<>();
    private final List<Unreadable> unreadable = new ArrayList<>();
    private final FileReport main;

    /** The last file is the one that was asked for. */
    Program(List<SpecFile> files, Texts texts, Consumer<Diagnostic> found) {
        SpecFile last = files.get(files.size() - 1);
        this.main = new FileReport(texts, last.text(), last.start(), found);
        for (SpecFile file : files) {
            FileReport report = new FileReport(texts, file.text(), file.start(), found);
            for (Statement statement : file.statements()) {
                if (statement instanceof Declaration line && Placement.fits(line, Container.FILE, report)) {
                    add(new Located(line, report));
                } else if (statement instanceof Statement.Unknown unknown) {
                    unreadable.add(Unreadable.of(texts.slice(unknown.span())));
                }
            }
            checkLanguage(file, report);
        }
    }

    private void add(Located located) {
        lines.computeIfAbsent(located.line().keyword(), k -> new ArrayList<>()).add(located);
        switch (located.line().keyword()) {
            case CUT_LINE, WORKED_LINE, BONE_LINE, TRIM_LINE, REMOVE_LINE, LOSS_LINE, REST_LINE -> parts.add(located);
            default -> {}
        }
        if (located.line().keyword().isOfSupply()) {
            terms.add(located);
        } else if (located.line().keyword().isTitle()) {
            titles.add(located);
        }
    }

    FileReport main() {
        return main;
    }

    /** All lines at the top. */
    Map<Keyword, List<Located>> lines() {
        return lines;
    }

    List<Located> all(Keyword keyword) {
        return lines.getOrDefault(keyword, List.of());
    }

    /** What the carcass is divided into. */
    List<Located> parts() {
        return parts;
    }

    /** What is laid down for all of it. */
    List<Located> terms() {
        return terms;
    }

    /** The title, of a specification or a requirement; a second one is reported. */
    Optional<Located> title() {
        return only(titles);
    }

    /** All titles; the first holds. */
    List<Located> titles() {
        return titles;
    }

    /** Whether a line at the top could not be read. */
    boolean hasUnreadable() {
        return !unreadable.isEmpty();
    }

    /** Whether a line that could not be read speaks of something, as written. */
    boolean mayDeclare(String words) {
        String wanted = Unreadable.of(words).words();
        return unreadable.stream().anyMatch(line -> line.words().contains(wanted));
    }

    /** Whether a line that could not be read may be meant as one of a kind. */
    boolean mayDeclare(Keyword keyword) {
        return mayDeclare(keyword.word())
                || unreadable.stream()
                        .anyMatch(line -> NearestName.of(line.first(), Keyword.names())
                                .filter(near -> near.text().equals(keyword.word()))
                                .isPresent());
    }

    /**
     * A line that could not be read, in small letters. How wide its gaps are makes no difference.
     *
     * @param first the letters that it begins with
     * @param words all of it without gaps
     */
    private record Unreadable(String first, String words) {
        static Unreadable of(String written) {
            String line = written.toLowerCase(Locale.ROOT);
            int end = 0;
            while (end < line.length() && Character.isLetter(line.charAt(end))) {
                end++;
            }
            StringBuilder words = new StringBuilder(line.length());
            line.chars()
                    .filter(c -> !Character.isWhitespace(c) && c != '\u00A0')
                    .forEach(c -> words.append((char) c));
            return new Unreadable(line.substring(0, end), words.toString());
        }
    }

    /** The only line of a kind; a second one is reported. */
    Optional<Located> only(Keyword keyword) {
        return only(all(keyword));
    }

    private static Optional<Located> only(List<Located> all) {
        for (Located second : all.subList(Math.min(1, all.size()), all.size())) {
            Located first = all.get(0);
            second.report()
                    .add(second.report()
                            .finding(MeaningCode.DECLARED_TWICE, second.line().keywordSpan())
                            .with("line", second.line().keyword().word())
                            .related(first.report().at(first.line().keywordSpan()), "the first one")
                            .help("Keep one of the two."));
        }
        return all.stream().findFirst();
    }

    private void checkLanguage(SpecFile file, FileReport report) {
        Optional<Declaration> first = file.statements().stream()
                .findFirst()
                .filter(statement -> statement instanceof Declaration)
                .map(Declaration.class::cast)
                .filter(line -> line.keyword() == Keyword.LANGUAGE_LINE);
        if (first.isEmpty()) {
            if (mayDeclare(Keyword.LANGUAGE_LINE)) {
                return;
            }
            report.add(report.finding(MeaningCode.NO_LANGUAGE, report.beginning())
                    .help("Write this as the first line: language " + LANGUAGE_VERSION));
            return;
        }
        for (Clause clause : first.get().clauses()) {
            if (clause instanceof Clause.Numbers version && !version.first().equals(LANGUAGE_VERSION)) {
                report.add(report.finding(MeaningCode.UNKNOWN_LANGUAGE, version.span())
                        .with("version", version.first())
                        .help("This program knows version " + LANGUAGE_VERSION + "; a newer one may know more."));
            }
        }
    }
}
