package dev.gambrel.tree.allowance;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which findings can be allowed: the warnings of the rules of the tree. */
final class Allowable {
    private static final List<Code> KNOWN = Stream.<Code[]>of(
                    TreeCode.values(), BenchCode.values(), AllowanceCode.values())
            .flatMap(Arrays::stream)
            .toList();

    private Allowable() {}

    /** The kind that a number or a name means, allowable or not. */
    static Optional<Code> named(String finding) {
        return KNOWN.stream()
                .filter(code ->
                        code.id().equalsIgnoreCase(finding) || code.slug().equalsIgnoreCase(finding))
                .findFirst();
    }

    static boolean is(Code code) {
        boolean ofRules = code instanceof TreeCode || code instanceof BenchCode;
        return ofRules && code.severity() == Severity.WARNING;
    }

    /** What stands before a reason without quotation marks, or else the nearest name. */
    static Optional<Code> meant(String finding) {
        return names().stream()
                .filter(name -> finding.startsWith(name.text() + "-"))
                .findFirst()
                .or(() -> NearestName.of(finding, names()))
                .flatMap(name -> named(name.text()));
    }

    static List<TradeName> names() {
        return KNOWN.stream()
                .filter(Allowable::is)
                .map(code -> TradeName.of(code.slug()))
                .toList();
    }
}
