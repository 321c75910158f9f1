package dev.gambrel.conformance.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;

/** The rooms of the house as packages, in the order in which they may know one another. */
final class Rooms {
    static final String[] SHARED = {
        "dev.gambrel.text..", "dev.gambrel.quantity..", "dev.gambrel.diagnostic..", "dev.gambrel.limits.."
    };
    static final String REFERENCES = "dev.gambrel.references..";
    static final String TREE = "dev.gambrel.tree..";
    static final String JSON = "dev.gambrel.json..";
    static final String YIELDS = "dev.gambrel.yields..";
    static final String BATCHES = "dev.gambrel.batches..";
    static final String REPORTS = "dev.gambrel.reports..";
    static final String BLENDS = "dev.gambrel.blends..";
    static final String COMPILER = "dev.gambrel.compiler..";
    static final String COMMAND_LINE = "dev.gambrel.cli..";

    /** Made by ANTLR: no rule of style speaks of it. */
    static final String GRAMMAR = "dev.gambrel.compiler.internal.grammar..";

    /** What stands behind the grammar and must be as ANTLR wants it. */
    static final String INTERNAL = "dev.gambrel.compiler.internal..";

    /** Values and maths that another program holds on to. */
    static final String[] VALUES = {
        SHARED[0], SHARED[1], SHARED[2], SHARED[3], REFERENCES, TREE, YIELDS, BLENDS, REPORTS
    };

    private Rooms() {}

    /** A public type in public types only. */
    static final DescribedPredicate<JavaClass> VISIBLE =
            DescribedPredicate.describe("are visible from outside", type -> {
                JavaClass at = type;
                while (at.getModifiers().contains(JavaModifier.PUBLIC)
                        && at.getEnclosingClass().isPresent()) {
                    at = at.getEnclosingClass().get();
                }
                return at.getModifiers().contains(JavaModifier.PUBLIC);
            });

    /** Leaves out tests and the program packed into one file, which holds every class a second time. */
    static final class MainClasses implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("/test-classes/") && !location.contains("/gambrel.jar");
        }
    }
}
