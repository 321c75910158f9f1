package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.tree.CutTree;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Supplier;
import net.jqwik.api.Example;

/** Same input, same bytes, in whatever country the machine was set up. */
class SameBytesLaws {
    /** Dotless i; Arabic digits; decimal comma; Devanagari digits. */
    private static final List<String> COUNTRIES = List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE", "hi-IN-u-nu-deva");

    private static final List<String> ZONES = List.of("Pacific/Kiritimati", "Pacific/Pago_Pago");

    private static <T> T in(String country, String zone, Supplier<T> work) {
        Locale countryBefore = Locale.getDefault();
        TimeZone zoneBefore = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(country));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            return work.get();
        } finally {
            Locale.setDefault(countryBefore);
            TimeZone.setDefault(zoneBefore);
        }
    }

    private static String everythingOf(Path file, String text) {
        Result<Compilation> result = Specifications.compile(file, text);
        String tables = result.value()
                .map(Compilation::tree)
                .map(tree -> TreeJsonWriter.write(tree) + Answers.table(tree))
                .orElse("");
        return Answers.report(result.diagnostics()) + tables;
    }

    private static void isTheSameEverywhere(Path file, String text) {
        String english = in("en-GB", "UTC", () -> everythingOf(file, text));
        for (String country : COUNTRIES) {
            for (String zone : ZONES) {
                String there = in(country, zone, () -> everythingOf(file, text));
                assertEquals(english, there, file.getFileName() + " in " + country);
            }
        }
    }

    @Example
    void the_countries_do_write_and_fold_differently() {
        for (String country : COUNTRIES) {
            assertNotEquals("1.5 title", in(country, "UTC", () -> String.format("%.1f ", 1.5) + "TITLE".toLowerCase()));
        }
    }

    @Example
    void every_specification_and_every_slip_reads_the_same() {
        Specifications.all().forEach(file -> isTheSameEverywhere(file, Specifications.text(file)));
    }

    @Example
    void words_of_the_language_in_capitals_are_the_same_words() {
        Path hogget = Specifications.house().get(0);
        CutTree plain = Specifications.compile(hogget).orElseThrow().tree();
        String shouted = Specifications.text(hogget)
                .replace("remove silverskin", "REMOVE SILVERSKIN")
                .replace("trim fat", "TRIM FAT")
                .replace("specification ", "SPECIFICATION ")
                .replace("\n  rest ", "\n  REST ");
        for (String country : COUNTRIES) {
            CutTree tree = in(
                    country,
                    "UTC",
                    () -> Specifications.compile(hogget, shouted).orElseThrow().tree());
            assertEquals(plain, tree, country);
        }
    }

    @Example
    void a_title_with_hidden_characters_is_printed_the_same() {
        Path hogget = Specifications.house().get(0);
        String hidden = Specifications.text(hogget).replace("Marram house hogget", "Marram\u202E house hogget");
        isTheSameEverywhere(hogget, hidden);
    }
}
