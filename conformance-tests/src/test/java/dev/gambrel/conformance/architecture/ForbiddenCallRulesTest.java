package dev.gambrel.conformance.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.io.PrintStream;
import java.nio.file.Files;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.util.Formatter;
import java.util.Locale;
import java.util.Random;
import java.util.Scanner;
import java.util.ServiceLoader;

/** Same input, same bytes, on any machine; and nothing is read, written, started or kept that was not asked for. */
@AnalyzeClasses(packages = "dev.gambrel", importOptions = Rooms.MainClasses.class)
class ForbiddenCallRulesTest {
    private static final String OURS = "dev.gambrel..";

    private static DescribedPredicate<JavaMethodCall> called(String owner, String names) {
        return DescribedPredicate.describe(
                "calls " + names + " of " + owner,
                call -> call.getTargetOwner().getName().equals(owner)
                        && call.getName().matches(names));
    }

    @ArchTest
    static final ArchRule only_the_program_speaks_to_the_terminal = noClasses()
            .that()
            .resideOutsideOfPackage(Rooms.COMMAND_LINE)
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in")
            .orShould()
            .callMethod(Throwable.class, "printStackTrace");

    @ArchTest
    static final ArchRule only_the_program_s_main_ends_the_machine = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("dev.gambrel.cli.Gambrel")
            .should()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .callMethodWhere(called("java.lang.Runtime", ".*"));

    @ArchTest
    static final ArchRule no_text_depends_on_the_country_of_the_machine = noClasses()
            .should()
            .callMethod(Locale.class, "getDefault")
            .orShould()
            .callMethod(Locale.class, "setDefault", Locale.class)
            .orShould()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class)
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .orShould()
            .callMethod(PrintStream.class, "printf", String.class, Object[].class)
            .orShould()
            .callConstructor(Formatter.class)
            .orShould()
            .callConstructor(Formatter.class, Appendable.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Scanner.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(NumberFormat.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(DecimalFormat.class);

    @ArchTest
    static final ArchRule no_text_depends_on_the_characters_of_the_machine = noClasses()
            .should()
            .callMethod(String.class, "getBytes")
            .orShould()
            .callConstructor(String.class, byte[].class)
            .orShould()
            .callMethod(System.class, "lineSeparator")
            .orShould()
            .callMethod(java.nio.charset.Charset.class, "defaultCharset");

    @ArchTest
    static final ArchRule nobody_looks_at_a_clock = noClasses()
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching(
                    "java\\.time\\.(Clock|Instant|Zone.*|Offset.*|LocalTime|LocalDateTime|Year|YearMonth|MonthDay)")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.(Date|Calendar|TimeZone|Timer.*)");

    @ArchTest
    static final ArchRule nothing_is_left_to_chance = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Random.class)
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.(SplittableRandom|UUID|random\\..*)")
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callMethod(System.class, "identityHashCode", Object.class)
            .orShould()
            .callMethod(java.util.Collections.class, "shuffle", java.util.List.class);

    @ArchTest
    static final ArchRule files_are_read_in_one_place_and_written_by_the_program = noClasses()
            .that()
            .resideOutsideOfPackages("dev.gambrel.compiler.source..", Rooms.COMMAND_LINE)
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Files.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(File.class)
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.io\\.(File.*|RandomAccessFile)|java\\.nio\\.channels\\..*");

    /** Of javax, XML and images may be written, into memory; they are never read. */
    @ArchTest
    static final ArchRule nobody_speaks_to_the_network_or_another_program = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching(
                    "java\\.net\\..*|java\\.lang\\.Process.*|java\\.sql\\..*"
                            + "|javax\\.(?!xml\\.stream\\.(XMLStreamWriter|XMLOutputFactory|XMLStreamException)$|imageio\\.(ImageIO|stream\\.(MemoryCacheImageOutputStream|ImageOutputStream))$).*");

    @ArchTest
    static final ArchRule nothing_is_found_by_its_name_at_run_time = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(ServiceLoader.class)
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.lang.reflect..")
            .orShould()
            .callMethodWhere(called("java.lang.Class", "forName|newInstance"))
            .orShould()
            .callMethodWhere(called("java.lang.ClassLoader", ".*"));

    @ArchTest
    static final ArchRule no_object_is_read_from_bytes = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.io\\.(Object(In|Out)put.*|Externalizable)");

    @ArchTest
    static final ArchRule nothing_runs_beside_the_caller_but_the_crew_of_a_batch = noClasses()
            .that()
            .resideOutsideOfPackage(Rooms.GRAMMAR)
            .and()
            .doNotHaveFullyQualifiedName("dev.gambrel.batches.Crew")
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.lang\\.(Thread.*|InheritableThreadLocal)|java\\.util\\.concurrent\\..*");

    @ArchTest
    static final ArchRule nobody_waits_for_a_lock = noMethods()
            .that()
            .areDeclaredInClassesThat(resideInAPackage(OURS))
            .should()
            .haveModifier(JavaModifier.SYNCHRONIZED);

    @ArchTest
    static final ArchRule nobody_keeps_a_log = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.logging\\..*|java\\.lang\\.System\\$Logger.*|org\\.slf4j\\..*");

    @ArchTest
    static final ArchRule no_setting_of_the_machine_changes_a_figure = noClasses()
            .that()
            .resideOutsideOfPackage(Rooms.COMMAND_LINE)
            .should()
            .callMethodWhere(called("java.lang.System", "getenv|getProperty|getProperties|setProperty"));
}
