package dev.gambrel.conformance.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.atn.ParserATNSimulator;

/** Each library that is not ours is known in one place, and nothing else comes in. */
@AnalyzeClasses(packages = "dev.gambrel", importOptions = Rooms.MainClasses.class)
class LibraryRulesTest {
    private static final String IMAGES = "dev.gambrel.reports.png..";

    private static ArchRule only(String library, String... places) {
        return noClasses()
                .that()
                .resideOutsideOfPackages(places)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }

    @ArchTest
    static final ArchRule antlr_is_known_to_the_parser_alone =
            only("org.antlr..", "dev.gambrel.compiler.parse..", Rooms.INTERNAL);

    @ArchTest
    static final ArchRule jackson_is_known_where_json_is_read_and_written =
            only("com.fasterxml..", Rooms.JSON, "dev.gambrel.cli.json..");

    @ArchTest
    static final ArchRule picocli_is_known_to_the_program_alone = only("picocli..", Rooms.COMMAND_LINE);

    @ArchTest
    static final ArchRule distributions_are_known_to_yields_and_blends_alone =
            only("org.apache..", Rooms.YIELDS, Rooms.BLENDS);

    @ArchTest
    static final ArchRule the_solver_is_known_in_one_place = only("org.ojalgo..", "dev.gambrel.blends.solver..");

    @ArchTest
    static final ArchRule images_are_drawn_in_one_place = only("com.github.weisj..", IMAGES);

    @ArchTest
    static final ArchRule the_graphics_of_the_machine_are_known_in_one_place = only("java.awt..", IMAGES);

    @ArchTest
    static final ArchRule images_are_written_in_one_place = only("javax.imageio..", IMAGES);

    @ArchTest
    static final ArchRule nothing_else_comes_in = classes()
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                    "dev.gambrel..",
                    "java..",
                    "javax.xml.stream..",
                    "javax.imageio..",
                    "com.github.weisj.jsvg..",
                    "org.antlr..",
                    "com.fasterxml.jackson.core..",
                    "picocli..",
                    "org.apache.commons.numbers.gamma..",
                    "org.apache.commons.statistics..",
                    "org.ojalgo.."));

    @ArchTest
    static final ArchRule what_the_grammar_makes_stays_with_the_parser =
            only(Rooms.GRAMMAR, "dev.gambrel.compiler.parse..", Rooms.INTERNAL);

    private static final DescribedPredicate<JavaClass> PARSER_TYPES =
            resideInAPackage("org.antlr..").or(resideInAPackage(Rooms.INTERNAL));

    @ArchTest
    static final ArchRule no_visible_method_takes_or_gives_what_belongs_to_the_parser = codeUnits()
            .that()
            .areDeclaredInClassesThat(resideOutsideOfPackages(Rooms.INTERNAL).and(Rooms.VISIBLE))
            .and()
            .arePublic()
            .should(Signatures.haveNone(PARSER_TYPES));

    /** One word of look-ahead decides: nothing that ANTLR makes for us asks for more, whatever the text. */
    @ArchTest
    static final ArchRule the_grammar_never_looks_further_than_one_word = noClasses()
            .that()
            .resideInAPackage(Rooms.GRAMMAR)
            .should()
            .callMethod(
                    ParserATNSimulator.class, "adaptivePredict", TokenStream.class, int.class, ParserRuleContext.class);
}
