package dev.gambrel.conformance.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.lang.model.element.Modifier;
import org.junit.jupiter.api.Test;

/** Nothing is longer or wider than a reader can hold. What ANTLR makes is no source of ours and not among the files. */
class SizeRulesTest {
    private static final int LINES_OF_A_FILE = 400;
    private static final int LINES_OF_A_METHOD = 40;
    private static final int PARAMETERS = 7;
    private static final int TYPES_OF_A_PACKAGE = 25;

    /** To be divided: these may shrink and not grow, and leave this list when they fit. */
    private static final Map<String, Integer> PACKAGES_TO_BE_DIVIDED = new TreeMap<>(Map.of(
            "dev.gambrel.tree", 27,
            "dev.gambrel.tree.rules", 31,
            "dev.gambrel.compiler.lower", 28));

    private static final Sources ALL = Sources.all();
    private static final Sources MAIN = Sources.main();

    @Test
    void no_file_has_more_than_400_lines() {
        List<String> longer = new ArrayList<>();
        for (CompilationUnitTree unit : ALL.units()) {
            long lines = Sources.line(unit, ALL.trees().getSourcePositions().getEndPosition(unit, unit));
            if (lines > LINES_OF_A_FILE) {
                longer.add(Sources.name(unit) + ": " + lines);
            }
        }
        assertEquals(List.of(), longer);
    }

    @Test
    void no_method_has_more_than_40_lines() {
        List<String> longer = new ArrayList<>();
        for (CompilationUnitTree unit : ALL.units()) {
            methods(unit, method -> {
                long lines = ALL.lines(unit, method);
                if (lines > LINES_OF_A_METHOD) {
                    longer.add(Sources.name(unit) + ", " + method.getName() + ": " + lines);
                }
            });
        }
        assertEquals(List.of(), longer);
    }

    @Test
    void no_record_or_constructor_has_more_than_7_parts() {
        List<String> wider = new ArrayList<>();
        for (CompilationUnitTree unit : MAIN.units()) {
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitClass(ClassTree type, Void none) {
                    if (type.getKind() == com.sun.source.tree.Tree.Kind.RECORD && components(type) > PARAMETERS) {
                        wider.add(Sources.name(unit) + ", " + type.getSimpleName() + ": " + components(type));
                    }
                    return super.visitClass(type, none);
                }
            }.scan(unit, null);
            methods(unit, method -> {
                if (method.getName().contentEquals("<init>")
                        && method.getParameters().size() > PARAMETERS) {
                    wider.add(Sources.name(unit) + ", constructor: "
                            + method.getParameters().size());
                }
            });
        }
        assertEquals(List.of(), wider);
    }

    /** Records have no fields of their own but static ones. */
    private static long components(ClassTree record) {
        return record.getMembers().stream()
                .filter(member -> member instanceof VariableTree field
                        && !field.getModifiers().getFlags().contains(Modifier.STATIC))
                .count();
    }

    @Test
    void no_package_has_more_than_25_types() {
        Map<String, Long> types = MAIN.units().stream()
                .filter(unit -> !unit.getTypeDecls().isEmpty())
                .collect(Collectors.groupingBy(
                        unit -> unit.getPackageName().toString(), TreeMap::new, Collectors.counting()));
        types.values().removeIf(count -> count <= TYPES_OF_A_PACKAGE);
        assertEquals(PACKAGES_TO_BE_DIVIDED.toString(), types.toString());
    }

    private interface Visit {
        void method(MethodTree method);
    }

    private static void methods(CompilationUnitTree unit, Visit visit) {
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMethod(MethodTree method, Void none) {
                visit.method(method);
                return super.visitMethod(method, none);
            }
        }.scan(unit, null);
    }
}
