package dev.gambrel.conformance.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Modifier;
import org.junit.jupiter.api.Test;

/**
 * Whatever another program can see says what it is for: types, constants, constructors and methods. What overrides
 * something says it there.
 */
class JavadocRulesTest {
    private static final Sources MAIN = Sources.main();

    @Test
    void all_that_is_visible_has_a_comment() {
        Visible visible = new Visible();
        MAIN.units().stream()
                .filter(unit -> Sources.name(unit).matches("(shared|library/.*|spec-lang/compiler)/src/main/.*"))
                .filter(unit -> !unit.getTypeDecls().isEmpty())
                .forEach(unit -> visible.scan(unit, null));
        assertEquals(List.of(), visible.bare);
        assertTrue(visible.commented > 500, "visible things looked at: " + visible.commented);
    }

    private static final class Visible extends TreePathScanner<Void, Void> {
        private final List<String> bare = new ArrayList<>();
        private int commented;

        @Override
        public Void visitClass(ClassTree type, Void none) {
            if (!isVisible(type.getModifiers())) {
                return null;
            }
            check(type.getSimpleName().toString());
            return super.visitClass(type, none);
        }

        @Override
        public Void visitMethod(MethodTree method, Void none) {
            boolean overrides = method.getModifiers().getAnnotations().stream()
                    .anyMatch(annotation ->
                            annotation.getAnnotationType().toString().equals("Override"));
            if (isVisible(method.getModifiers()) && !overrides && isWritten(method)) {
                check(method.getName().toString());
            }
            return null;
        }

        @Override
        public Void visitVariable(VariableTree field, Void none) {
            boolean isComponent = above().getKind() == Tree.Kind.RECORD
                    && !field.getModifiers().getFlags().contains(Modifier.STATIC);
            if (isVisible(field.getModifiers()) && !isComponent) {
                check(field.getName().toString());
            }
            return null;
        }

        /** A constructor that the compiler adds stands nowhere. */
        private boolean isWritten(MethodTree method) {
            var positions = MAIN.trees().getSourcePositions();
            var unit = getCurrentPath().getCompilationUnit();
            return positions.getEndPosition(unit, method) > positions.getStartPosition(unit, method);
        }

        private Tree above() {
            return getCurrentPath().getParentPath().getLeaf();
        }

        private boolean isVisible(ModifiersTree modifiers) {
            Set<Modifier> flags = modifiers.getFlags();
            boolean byPlace = above().getKind() == Tree.Kind.INTERFACE && !flags.contains(Modifier.PRIVATE);
            return byPlace || flags.contains(Modifier.PUBLIC) || flags.contains(Modifier.PROTECTED);
        }

        private void check(String name) {
            TreePath path = getCurrentPath();
            String comment = MAIN.trees().getDocComment(path);
            if (comment == null || comment.isBlank()) {
                bare.add(Sources.name(path.getCompilationUnit()) + ", " + name);
            } else {
                commented++;
            }
        }
    }
}
