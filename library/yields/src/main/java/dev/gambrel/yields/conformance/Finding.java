package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.List;

/** An answer in the making: one clause, what is held against it, and the verdict with its reason. */
final class Finding {
    private final Stated asked;
    private final List<Stated> held;

    Finding(Stated asked, List<Stated> held) {
        this.asked = asked;
        this.held = held;
    }

    Answer meets(Margin margin) {
        return answer(ConformanceCode.CLAUSE_MET, Verdict.MEETS, margin);
    }

    Answer answer(ConformanceCode code, Verdict verdict) {
        return answer(code, verdict, new Margin.None());
    }

    Answer answer(ConformanceCode code, Verdict verdict, Margin margin) {
        return answer(reason(code), verdict, margin);
    }

    Answer answer(Diagnostic reason, Verdict verdict, Margin margin) {
        return new Answer(asked, verdict, held, margin, List.of(), reason);
    }

    /** The reason with both places; the first of what is held is told in the sentence. */
    Diagnostic reason(ConformanceCode code) {
        Diagnostic reason =
                Diagnostic.of(code, asked.at()).with("asked", asked.clause().words());
        if (held.isEmpty()) {
            return reason;
        }
        Diagnostic told = reason.with("held", String.join("; ", heldWords()));
        for (Stated stated : held) {
            told = told.related(stated.at(), "what the house lays down");
        }
        return told;
    }

    private List<String> heldWords() {
        return held.stream().map(stated -> stated.clause().words()).distinct().toList();
    }

    Stated asked() {
        return asked;
    }

    List<Stated> held() {
        return held;
    }
}
