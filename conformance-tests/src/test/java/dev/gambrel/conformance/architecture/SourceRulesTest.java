package dev.gambrel.conformance.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.CatchTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.SynchronizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnionTypeTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What only the source shows, since the compiler adds such things of its own. */
class SourceRulesTest {
    private static final Set<String> TOO_WIDE =
            Set.of("Throwable", "Error", "VirtualMachineError", "StackOverflowError", "OutOfMemoryError");

    @Test
    void nobody_catches_what_the_machine_throws() {
        assertEquals(List.of(), found(Sources.main(), new Finder() {
            @Override
            public Void visitCatch(CatchTree caught, Void none) {
                Tree type = caught.getParameter().getType();
                List<? extends Tree> types =
                        type instanceof UnionTypeTree union ? union.getTypeAlternatives() : List.of(type);
                types.stream()
                        .map(Object::toString)
                        .filter(TOO_WIDE::contains)
                        .forEach(name -> add(caught, "catches " + name));
                return super.visitCatch(caught, none);
            }
        }));
    }

    @Test
    void nobody_locks_anything() {
        assertEquals(List.of(), found(Sources.main(), new Finder() {
            @Override
            public Void visitSynchronized(SynchronizedTree block, Void none) {
                add(block, "synchronized");
                return super.visitSynchronized(block, none);
            }
        }));
    }

    @Test
    void no_test_is_left_out() {
        assertEquals(List.of(), found(Sources.all(), new Finder() {
            @Override
            public Void visitAnnotation(AnnotationTree annotation, Void none) {
                if (annotation.getAnnotationType().toString().matches("(.*\\.)?(Disabled.*|Ignore|ArchIgnore)")) {
                    add(annotation, annotation.toString());
                }
                return super.visitAnnotation(annotation, none);
            }
        }));
    }

    private static List<String> found(Sources sources, Finder finder) {
        sources.units().forEach(unit -> finder.look(sources, unit));
        return finder.found;
    }

    private abstract static class Finder extends TreeScanner<Void, Void> {
        private final List<String> found = new ArrayList<>();
        private Sources sources;
        private CompilationUnitTree unit;

        void look(Sources sources, CompilationUnitTree unit) {
            this.sources = sources;
            this.unit = unit;
            scan(unit, null);
        }

        void add(Tree tree, String what) {
            long start = sources.trees().getSourcePositions().getStartPosition(unit, tree);
            found.add(Sources.name(unit) + ":" + Sources.line(unit, start) + " " + what);
        }
    }
}
