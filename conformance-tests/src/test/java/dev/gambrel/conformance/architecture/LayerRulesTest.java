package dev.gambrel.conformance.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Arrows go one way: shared words, then meaning and mathematics, then the language, then the program. */
@AnalyzeClasses(packages = "dev.gambrel", importOptions = Rooms.MainClasses.class)
class LayerRulesTest {
    @ArchTest
    static final ArchRule each_room_knows_only_those_before_it = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("dev.gambrel..")
            .layer("shared")
            .definedBy(Rooms.SHARED)
            .layer("references")
            .definedBy(Rooms.REFERENCES)
            .layer("tree")
            .definedBy(Rooms.TREE)
            .layer("json")
            .definedBy(Rooms.JSON)
            .layer("yields")
            .definedBy(Rooms.YIELDS)
            .layer("batches")
            .definedBy(Rooms.BATCHES)
            .layer("reports")
            .definedBy(Rooms.REPORTS)
            .layer("blends")
            .definedBy(Rooms.BLENDS)
            .layer("compiler")
            .definedBy(Rooms.COMPILER)
            .layer("command line")
            .definedBy(Rooms.COMMAND_LINE)
            .whereLayer("tree")
            .mayOnlyBeAccessedByLayers("json", "yields", "batches", "reports", "blends", "compiler", "command line")
            .whereLayer("references")
            .mayOnlyBeAccessedByLayers("yields", "command line")
            .whereLayer("json")
            .mayOnlyBeAccessedByLayers("batches", "command line")
            .whereLayer("yields")
            .mayOnlyBeAccessedByLayers("batches", "reports", "blends", "command line")
            .whereLayer("batches")
            .mayOnlyBeAccessedByLayers("reports", "command line")
            .whereLayer("reports")
            .mayOnlyBeAccessedByLayers("command line")
            .whereLayer("blends")
            .mayOnlyBeAccessedByLayers("command line")
            .whereLayer("compiler")
            .mayOnlyBeAccessedByLayers("command line")
            .whereLayer("command line")
            .mayNotBeAccessedByAnyLayer()
            .ensureAllClassesAreContainedInArchitecture();

    @ArchTest
    static final ArchRule modules_do_not_go_round =
            slices().matching("dev.gambrel.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule the_tree_does_not_know_its_rules = noClasses()
            .that()
            .resideInAPackage("dev.gambrel.tree")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("dev.gambrel.tree.rules..");

    @ArchTest
    static final ArchRule yields_do_not_know_their_table = noClasses()
            .that()
            .resideInAPackage("dev.gambrel.yields")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("dev.gambrel.yields.table..");

    @ArchTest
    static final ArchRule the_phases_of_the_compiler_go_one_way = noClasses()
            .that()
            .resideInAnyPackage(
                    "dev.gambrel.compiler.syntax..",
                    "dev.gambrel.compiler.source..",
                    "dev.gambrel.compiler.parse..",
                    Rooms.INTERNAL)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("dev.gambrel.compiler.lower..");

    @ArchTest
    static final ArchRule syntax_does_not_know_its_parser = noClasses()
            .that()
            .resideInAnyPackage("dev.gambrel.compiler.syntax..", "dev.gambrel.compiler.source..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("dev.gambrel.compiler.parse..", Rooms.INTERNAL);

    @ArchTest
    static final ArchRule packages_of_a_module_do_not_go_round = slices().matching("dev.gambrel.(**)")
            .as("packages")
            .should()
            .beFreeOfCycles()
            .ignoreDependency(resideInAPackage(Rooms.INTERNAL), resideInAPackage(Rooms.INTERNAL));
}
