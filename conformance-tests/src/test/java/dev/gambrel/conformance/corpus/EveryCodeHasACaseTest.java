package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Codes;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.lower.MeaningCode;
import dev.gambrel.compiler.parse.SyntaxCode;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of finding is in the corpus, at an exact place in a text. */
class EveryCodeHasACaseTest {
    /** Reported of a file as a whole: the hostile case of too many statements. */
    private static final Code OF_A_WHOLE_FILE = FileCode.TOO_MANY_LINES;
    /** Declared and reported nowhere. */
    private static final Code NOT_REPORTED_YET = MeaningCode.NOT_ONE_FIGURE;
    /** Only among the known faults, since more is found with it than should be. */
    private static final Code KNOWN_FAULT = SyntaxCode.TOO_DEEP;

    @Test
    void every_kind_of_finding_underlines_words_of_some_case(@TempDir Path temporary) {
        Set<String> underlined = new TreeSet<>();
        cases(temporary)
                .flatMap(List::stream)
                .filter(finding -> isUnderlined(finding.place()))
                .forEach(finding -> underlined.add(finding.code().id()));
        Set<String> wanted = new TreeSet<>();
        Codes.all().stream().filter(code -> !isExempt(code)).forEach(code -> wanted.add(code.id()));
        assertEquals(wanted, underlined);
    }

    /** JSON files and carcass weights have tests beside their readers, and cases of their own. */
    private static boolean isExempt(Code code) {
        return code == OF_A_WHOLE_FILE
                || code == NOT_REPORTED_YET
                || code == KNOWN_FAULT
                || code.id().startsWith("G09")
                || code.id().startsWith("G10");
    }

    private static Stream<List<Diagnostic>> cases(Path temporary) {
        Stream<Path> files = Stream.concat(
                InvalidCasesTest.files().stream(),
                InvalidCasesTest.folders().stream().map(folder -> folder.resolve("main.cuts")));
        return Stream.concat(
                files.map(file -> new SpecCompiler().compile(file).diagnostics()),
                Stream.of(HostileCase.values())
                        .map(hostile -> hostile.compileIn(temporary).diagnostics()));
    }

    private static boolean isUnderlined(Place place) {
        Place at = place instanceof Place.Written written ? written.text() : place;
        return at instanceof Place.InText text && text.span().length() > 0;
    }

    @Test
    void what_is_exempt_has_its_own_case() {
        assertTrue(Stream.of(HostileCase.values())
                .anyMatch(hostile -> hostile.codes().equals(OF_A_WHOLE_FILE.id())));
        assertTrue(KnownFaultsTest.files().stream()
                .anyMatch(file -> Corpus.announced(file).equals(KNOWN_FAULT.id())));
        assertFalse(Codes.all().isEmpty());
    }
}
