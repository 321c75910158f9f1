package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.allowance.AllowanceCode;
import dev.gambrel.tree.inspection.ChoiceCode;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Tells what only follows from something reported already: one cause, one message. Of a line that could not be read, its
 * meaning is not spoken of; what an unreadable line or a missing file may have declared is not missing.
 */
final class Consequences {
    private static final Set<Code> GRADED =
            Set.of(ChoiceCode.UNKNOWN_GRADE, ChoiceCode.UNKNOWN_GRADE_VALUE, ChoiceCode.CONDITIONS_LEAVE_GAP);

    private final Set<String> unreadLines = new HashSet<>();
    private final Program program;
    private final boolean incomplete;

    /**
     * What is known before meaning is looked at.
     *
     * @param reading what was found while reading
     * @param program what was read
     * @param incomplete whether a file that is used is missing
     */
    Consequences(List<Diagnostic> reading, Program program, boolean incomplete) {
        this.program = program;
        this.incomplete = incomplete;
        reading.forEach(finding -> unreadLines.add(line(finding.place())));
    }

    List<Diagnostic> without(List<Diagnostic> meaning) {
        boolean sound = unreadLines.isEmpty() && !Result.hasError(meaning);
        return meaning.stream()
                .filter(finding -> !follows(finding))
                .filter(finding -> sound || finding.code() != AllowanceCode.UNUSED_ALLOWANCE)
                .toList();
    }

    private boolean follows(Diagnostic finding) {
        return unreadLines.contains(line(finding.place())) || isMerelyMissing(finding);
    }

    private boolean isMerelyMissing(Diagnostic finding) {
        Code code = finding.code();
        if (code == MeaningCode.NO_SPECIFICATION) {
            return incomplete
                    || program.mayDeclare(Keyword.SPECIFICATION_LINE)
                    || program.mayDeclare(Keyword.REQUIREMENT_LINE);
        } else if (code == MeaningCode.NO_CARCASS) {
            return incomplete || program.mayDeclare(Keyword.CARCASS_LINE);
        } else if (code == MeaningCode.UNKNOWN_SPECIES) {
            return incomplete || program.mayDeclare(Keyword.USE_LINE) || program.mayDeclare(Keyword.SPECIES_LINE);
        } else if (code == MeaningCode.NO_CUTS) {
            return incomplete;
        } else if (code == TreeCode.UNKNOWN_STREAM
                || code == TreeCode.UNKNOWN_SOURCE
                || code == EquationCode.UNKNOWN_TERM
                || code == EquationCode.UNKNOWN_ESTIMATE
                || code == ChoiceCode.UNKNOWN_GRADE && !isGradeDamaged()) {
            return incomplete || program.mayDeclare(finding.arguments().get(0).shown());
        }
        return GRADED.contains(code) && isGradeDamaged();
    }

    /** A grade of which the line was damaged may have any name and more values. */
    private boolean isGradeDamaged() {
        return program.all(Keyword.GRADE_LINE).stream()
                .anyMatch(located -> located.line().damaged());
    }

    private static String line(Place place) {
        if (place instanceof Place.Written written) {
            return line(written.text());
        } else if (place instanceof Place.InText in) {
            return in.text().name() + ":"
                    + in.text().position(in.span().start()).line();
        }
        return place.toString();
    }
}
