package dev.gambrel.compiler;

import static dev.gambrel.compiler.Compiled.codes;
import static dev.gambrel.compiler.Compiled.messages;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.code.SyntaxCode;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.inspection.TreeCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SpecCompilerTest {
    private static final String LEG = Compiled.HEAD + "cut leg 33 % ± 0.9 %, two per carcass\nrest -> mince\n";

    @TempDir
    Path folder;

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static List<TradeName> species() {
        return Catalogue.species();
    }

    @Test
    void the_catalogue_has_sheep_deer_pig_and_cattle() {
        assertEquals(
                List.of("sheep", "fallow deer", "red deer", "pig", "cattle"),
                species().stream().map(TradeName::text).toList());
    }

    @ParameterizedTest
    @MethodSource("species")
    void a_small_sheet_that_uses_a_species_of_the_catalogue_is_without_findings(TradeName species) {
        var result = Compiled.text("""
                language 1
                use "catalogue:%1$s"
                specification "House" revision 1 for %1$s
                carcass cold
                stream mince, saleable
                rest -> mince
                """.formatted(species));
        assertEquals(List.of(), messages(result));
        var known = result.orElseThrow().tree().species();
        assertEquals(species, known.name());
        assertTrue(known.ribs().isStated() && !known.pieces().isEmpty());
        assertEquals(2, result.orElseThrow().texts().size());
    }

    @ParameterizedTest
    @MethodSource("species")
    void every_published_figure_of_the_catalogue_names_its_source(TradeName species) {
        var tree = Compiled.text("""
                        language 1
                        use "catalogue:%1$s"
                        specification "House" revision 1 for %1$s
                        carcass cold
                        stream mince, saleable
                        rest -> mince
                        """.formatted(species)).orElseThrow().tree();
        var pieces = new ArrayList<>(tree.species().pieces());
        for (int i = 0; i < pieces.size(); i++) {
            pieces.addAll(pieces.get(i).parts());
            for (var figure : pieces.get(i).published()) {
                assertTrue(
                        figure.sources().stream()
                                .anyMatch(name -> tree.source(name).isPresent()),
                        () -> figure.expected().toString());
            }
        }
    }

    @Test
    void a_species_that_the_catalogue_lacks_gets_the_nearest() {
        var result = Compiled.text("language 1\nuse \"catalogue:shep\"\n");
        assertEquals("The catalogue has no shep.", messages(result).get(0));
        assertEquals(
                "Did you mean “catalogue:sheep”?",
                result.diagnostics().get(0).help().get(0));
        var odd = Compiled.text("language 1\nuse \"catalogue:../sheep\"\n");
        assertEquals(FileCode.NOT_IN_CATALOGUE, codes(odd).get(0));
    }

    @Test
    void a_file_is_compiled_from_its_folder() throws IOException {
        Path file = write("hogget.cuts", LEG);
        var result = new SpecCompiler().compile(file);
        assertEquals(List.of(), messages(result));
        assertEquals(
                "Marram hogget", result.orElseThrow().tree().specification().title());
        assertEquals("hogget.cuts", result.orElseThrow().texts().get(0).name());
    }

    @Test
    void a_file_that_is_not_there_is_a_finding() {
        var result = new SpecCompiler().compile(folder.resolve("hoggit.cuts"));
        assertEquals(List.of("There is no specification file “hoggit.cuts” here."), messages(result));
    }

    @Test
    void a_folder_is_no_file() {
        assertEquals(List.of(FileCode.CANNOT_READ), codes(new SpecCompiler().compile(folder)));
        assertEquals(List.of(FileCode.CANNOT_READ), codes(new SpecCompiler().compile(folder.getRoot())));
    }

    @Test
    void a_file_of_exactly_the_limit_is_taken_and_one_byte_more_is_not() throws IOException {
        Path file = write("hogget.cuts", LEG);
        int size = (int) Files.size(file);
        assertEquals(List.of(), messages(new SpecCompiler(textBytes(size)).compile(file)));
        assertEquals(
                List.of("The file hogget.cuts is " + size + " bytes; at most " + (size - 1) + " are taken."),
                messages(new SpecCompiler(textBytes(size - 1)).compile(file)));
    }

    private static Limits textBytes(int bytes) {
        return new Limits(bytes, 100, 50, 8, 20_000, 50_000, 50);
    }

    @Test
    void a_file_that_is_no_text_is_not_guessed_at() throws IOException {
        Path file = folder.resolve("hogget.cuts");
        Files.write(file, new byte[] {'c', 'u', 't', ' ', (byte) 0xE9});
        assertEquals(List.of("The file hogget.cuts is not text in UTF-8."), messages(new SpecCompiler().compile(file)));
    }

    @Test
    void statements_are_counted_through_all_braces() {
        String sheet = Compiled.HEAD + "cut leg 33 % {\n  note \"a\"\n  note \"b\"\n}\nrest -> mince\n";
        var text = new SourceText("hogget.cuts", sheet);
        assertEquals(List.of(), messages(declarations(10).compile(text, Sources.none())));
        assertEquals(
                List.of("There are more than 9 statements."),
                messages(declarations(9).compile(text, Sources.none())));
    }

    private static SpecCompiler declarations(int most) {
        return new SpecCompiler(new Limits(1 << 20, 100, 50, 8, most, 50_000, 50));
    }

    @Test
    void braces_are_counted_before_anything_descends_into_them() {
        String deep = Compiled.HEAD + "cut leg 33 % {\ncut chump 10 % {\n}\nrest -> mince\n}\nrest -> mince\n";
        var text = new SourceText("hogget.cuts", deep);
        assertEquals(List.of(), messages(nesting(2).compile(text, Sources.none())));
        assertEquals(
                SyntaxCode.TOO_DEEP,
                codes(nesting(1).compile(text, Sources.none())).get(0));
        String abyss = Compiled.HEAD + "cut leg 33 % {\n".repeat(50_000);
        assertEquals(List.of(SyntaxCode.TOO_DEEP), codes(Compiled.text(abyss)).subList(0, 1));
    }

    private static SpecCompiler nesting(int most) {
        return new SpecCompiler(new Limits(1 << 20, most, 50, 8, 20_000, 50_000, 50));
    }

    @Test
    void parts_of_a_tree_are_counted() {
        var text = new SourceText("hogget.cuts", LEG);
        var limits = new Limits(1 << 20, 100, 50, 8, 20_000, 1, 50);
        assertEquals(List.of(TreeCode.TOO_MANY_PARTS), codes(new SpecCompiler(limits).compile(text, Sources.none())));
    }

    @Test
    void one_compiler_serves_many_threads_with_one_answer() throws Exception {
        SpecCompiler compiler = new SpecCompiler();
        String broken = LEG + "cut loin 80 %\ncut\nbone femru 7 % -> bonse\n";
        Result<Compilation> good = compiler.compile(new SourceText("hogget.cuts", LEG), Sources.none());
        Result<Compilation> bad = compiler.compile(new SourceText("hogget.cuts", broken), Sources.none());
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Boolean>> work = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                String text = i % 2 == 0 ? LEG : broken;
                Result<Compilation> same = i % 2 == 0 ? good : bad;
                work.add(() -> compiler.compile(new SourceText("hogget.cuts", text), Sources.none())
                        .equals(same));
            }
            for (Future<Boolean> answer : hands.invokeAll(work)) {
                assertTrue(answer.get());
            }
        } finally {
            hands.shutdown();
        }
        assertTrue(Result.hasError(bad.diagnostics()));
    }

    @Test
    void findings_are_told_in_the_order_of_their_places() {
        var result = Compiled.sheet("cut leg 33 kg\nrest -> minse\ncut leg\ncut loin 12 %, boned\n");
        assertEquals(
                List.of("hogget.cuts:7", "hogget.cuts:8", "hogget.cuts:9", "hogget.cuts:10"),
                result.diagnostics().stream().map(Compiled::line).toList());
    }

    @Test
    void all_findings_of_a_sheet_come_in_one_run() {
        var result = Compiled.sheet("""
                cut leg 33 kg
                cut loin 12 %, two per carcas
                stream diced, saleable, lean 85
                cutt neck 4 %
                rest -> minse
                """);
        assertEquals(
                List.of("33 kg", "carcas", "85", "cutt", "minse"),
                result.diagnostics().stream().map(Compiled::underlined).toList());
    }

    @Test
    void a_finding_of_the_tree_is_told_where_it_is_written() {
        var result = Compiled.sheet("cut leg 33.0 %\ncut loin 68 %\n");
        Diagnostic finding = result.diagnostics().get(0);
        assertEquals(TreeCode.SUM_NOT_100, finding.code());
        assertTrue(Compiled.line(finding).startsWith("hogget.cuts:"));
    }
}
