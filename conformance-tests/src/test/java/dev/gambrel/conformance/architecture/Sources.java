package dev.gambrel.conformance.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Java files of the whole house, read by the compiler of the JDK as far as their syntax.
 *
 * @param units the files
 * @param trees finds comments and positions in them
 */
record Sources(List<CompilationUnitTree> units, Trees trees) {
    private static final Path HOUSE =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();
    private static final List<String> ROOMS =
            List.of("shared", "library", "spec-lang", "examples", "conformance-tests");

    /** What is shipped. */
    static Sources main() {
        return read(file -> file.contains("/src/main/java/"));
    }

    /** What is shipped, and what proves it. */
    static Sources all() {
        return read(file -> true);
    }

    private interface Choice {
        boolean takes(String file);
    }

    private static Sources read(Choice choice) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager =
                compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null,
                    manager,
                    null,
                    List.of("-proc:none"),
                    null,
                    manager.getJavaFileObjectsFromPaths(
                            files().filter(file -> choice.takes(unix(file))).toList()));
            return new Sources(toList(task.parse()), Trees.instance(task));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<CompilationUnitTree> toList(Iterable<? extends CompilationUnitTree> units) {
        List<CompilationUnitTree> list = new java.util.ArrayList<>();
        units.forEach(list::add);
        return List.copyOf(list);
    }

    private static Stream<Path> files() {
        return ROOMS.stream().flatMap(room -> javaFiles(HOUSE.resolve(room)).stream());
    }

    private static List<Path> javaFiles(Path room) {
        try (Stream<Path> walked = Files.walk(room)) {
            return walked.filter(file -> unix(file).matches(".*/src/(main|test)/java/.*\\.java"))
                    .filter(file -> !file.endsWith("module-info.java"))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String unix(Path file) {
        return file.toString().replace('\\', '/');
    }

    /** The file from the top of the house, as messages show it. */
    static String name(CompilationUnitTree unit) {
        return unix(HOUSE.relativize(Path.of(unit.getSourceFile().toUri())));
    }

    /** How many lines there are from the first character of something to its last. */
    long lines(CompilationUnitTree unit, com.sun.source.tree.Tree tree) {
        var positions = trees.getSourcePositions();
        return line(unit, positions.getEndPosition(unit, tree))
                - line(unit, positions.getStartPosition(unit, tree))
                + 1;
    }

    static long line(CompilationUnitTree unit, long position) {
        return unit.getLineMap().getLineNumber(position);
    }
}
