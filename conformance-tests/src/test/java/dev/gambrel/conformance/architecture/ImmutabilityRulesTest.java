package dev.gambrel.conformance.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import dev.gambrel.diagnostic.Result;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** What another program holds on to does not change under its hands, and nothing is shared behind its back. */
@AnalyzeClasses(packages = "dev.gambrel", importOptions = Rooms.MainClasses.class)
class ImmutabilityRulesTest {
    private static final DescribedPredicate<JavaField> WRITTEN_BY_US = DescribedPredicate.describe(
            "are written by us", field -> !field.getModifiers().contains(JavaModifier.SYNTHETIC));

    private static final DescribedPredicate<JavaClass> CLOSED = DescribedPredicate.describe(
            "closed to heirs from elsewhere",
            type -> type.isRecord()
                    || type.isEnum()
                    || type.isInterface()
                    || type.getModifiers().contains(JavaModifier.FINAL)
                    || type.reflect().isSealed());

    private static final DescribedPredicate<JavaClass> ARRAY =
            DescribedPredicate.describe("an array", JavaClass::isArray);

    @ArchTest
    static final ArchRule values_have_final_fields_only = fields().that()
            .areDeclaredInClassesThat(
                    JavaClass.Predicates.resideInAnyPackage(Rooms.VALUES).and(Rooms.VISIBLE))
            .and(WRITTEN_BY_US)
            .should()
            .beFinal();

    @ArchTest
    static final ArchRule nothing_static_can_be_set = fields().that()
            .areDeclaredInClassesThat(JavaClass.Predicates.resideOutsideOfPackage(Rooms.GRAMMAR))
            .and()
            .areStatic()
            .and(WRITTEN_BY_US)
            .should()
            .beFinal();

    @ArchTest
    static final ArchRule no_array_lies_open = noFields()
            .that()
            .areDeclaredInClassesThat(JavaClass.Predicates.resideOutsideOfPackage(Rooms.GRAMMAR))
            .and()
            .areNotPrivate()
            .and(WRITTEN_BY_US)
            .should()
            .haveRawType(ARRAY);

    @ArchTest
    static final ArchRule visible_classes_have_no_heirs_from_elsewhere = classes()
            .that(Rooms.VISIBLE)
            .and()
            .resideOutsideOfPackage(Rooms.INTERNAL)
            .should(ArchCondition.from(CLOSED));

    /** A result is a value or the findings that say why there is none; nothing else keeps an optional. */
    @ArchTest
    static final ArchRule no_field_is_optional = noFields()
            .that()
            .areDeclaredInClassesThat(DescribedPredicate.not(JavaClass.Predicates.equivalentTo(Result.class)))
            .should()
            .haveRawType(Optional.class)
            .orShould()
            .haveRawType(OptionalDouble.class)
            .orShould()
            .haveRawType(OptionalInt.class)
            .orShould()
            .haveRawType(OptionalLong.class);
}
