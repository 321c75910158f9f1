package dev.gambrel.conformance.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.HashSet;
import java.util.Set;

/** What a method says of itself to the outside: parameters, result, and what is thrown, type arguments included. */
final class Signatures {
    private Signatures() {}

    static ArchCondition<JavaCodeUnit> haveNone(DescribedPredicate<JavaClass> unwanted) {
        return new ArchCondition<>("have no type that resides in " + unwanted.getDescription()) {
            @Override
            public void check(JavaCodeUnit unit, ConditionEvents events) {
                types(unit).stream()
                        .filter(unwanted)
                        .forEach(type -> events.add(
                                SimpleConditionEvent.violated(unit, unit.getFullName() + " has " + type.getName())));
            }
        };
    }

    private static Set<JavaClass> types(JavaCodeUnit unit) {
        Set<JavaClass> types = new HashSet<>(unit.getReturnType().getAllInvolvedRawTypes());
        unit.getParameterTypes().forEach(type -> types.addAll(type.getAllInvolvedRawTypes()));
        types.addAll(unit.getExceptionTypes());
        return types;
    }
}
