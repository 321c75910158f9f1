package dev.gambrel.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.lang.module.FindException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.lang.module.ResolvedModule;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The library as modules: an embedder gets what is meant to be public, and pays for nothing else. */
class ModulesTest {
    private static final List<Path> ON_THE_CLASS_PATH = Stream.of(
                    System.getProperty("java.class.path").split(File.pathSeparator))
            .map(Path::of)
            .toList();

    @Test
    void an_example_runs_on_the_module_path() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--module-path",
                        modules(Set.of("dev.gambrel.examples")),
                        "--module",
                        "dev.gambrel.examples/dev.gambrel.examples.TreeFromJson",
                        Marram.file("topside.json").toString())
                .redirectErrorStream(true)
                .start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), printed);
        assertTrue(printed.contains("topside"), printed);
    }

    @Test
    void the_maths_brings_no_reader_of_text_or_json_with_it() {
        Set<String> needed = needs("dev.gambrel.yields");
        assertTrue(needed.contains("dev.gambrel.tree"), needed::toString);
        assertTrue(needed.contains("org.apache.commons.statistics.distribution"), needed::toString);
        assertFalse(
                needed.stream().anyMatch(name -> name.contains("antlr") || name.contains("jackson")), needed::toString);
    }

    @Test
    void the_tree_brings_nothing_but_its_words_with_it() {
        assertEquals(Set.of("dev.gambrel.shared", "dev.gambrel.tree"), needs("dev.gambrel.tree"));
    }

    @Test
    void an_embedder_sees_what_is_public(@TempDir Path out) {
        assertEquals(List.of(), compiled("dev.gambrel.yields.Yields", out));
        assertEquals(List.of(), compiled("dev.gambrel.yields.portions.Portioning", out));
    }

    @Test
    void an_embedder_does_not_see_what_is_behind_it(@TempDir Path out) {
        assertEquals(
                List.of("package dev.gambrel.yields.closure is not visible"),
                compiled("dev.gambrel.yields.closure.Closure", out));
    }

    /** The first line of each error of an embedder that imports a type. */
    private static List<String> compiled(String type, Path out) {
        JavaCompiler javac = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        javac.getTask(
                        null,
                        null,
                        found,
                        List.of(
                                "-proc:none",
                                "-d",
                                out.toString(),
                                "--module-path",
                                modules(Set.of("dev.gambrel.yields"))),
                        null,
                        List.of(
                                source("module-info", "module embedder { requires dev.gambrel.yields; }"),
                                source("embedder/Embedder", "package embedder; class Embedder { " + type + " held; }")))
                .call();
        return found.getDiagnostics().stream()
                .map(each -> each.getMessage(Locale.ROOT).lines().findFirst().orElse(""))
                .toList();
    }

    private static JavaFileObject source(String name, String text) {
        return new SimpleJavaFileObject(URI.create("string:///" + name + ".java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return text;
            }
        };
    }

    private static Set<String> needs(String root) {
        return resolved(Set.of(root))
                .map(ModuleReference::descriptor)
                .map(ModuleDescriptor::name)
                .filter(name -> !name.startsWith("java."))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String modules(Set<String> roots) {
        return resolved(roots)
                .flatMap(module -> module.location().stream())
                .filter(place -> place.getScheme().equals("file"))
                .map(place -> Path.of(place).toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static Stream<ModuleReference> resolved(Set<String> roots) {
        ModuleFinder finder = ModuleFinder.of(
                ON_THE_CLASS_PATH.stream().filter(ModulesTest::isModule).toArray(Path[]::new));
        return ModuleLayer.boot().configuration().resolve(finder, ModuleFinder.of(), roots).modules().stream()
                .map(ResolvedModule::reference);
    }

    /** The classes of the tests, and jars without a module's name, are none. */
    private static boolean isModule(Path place) {
        try {
            return ModuleFinder.of(place).findAll().stream()
                    .anyMatch(module -> !module.descriptor().isAutomatic()
                            || module.descriptor().name().contains("antlr"));
        } catch (FindException none) {
            return false;
        }
    }
}
