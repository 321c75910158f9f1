package dev.gambrel.tree.term;

import dev.gambrel.tree.portion.Limit;
import java.util.Optional;

/** What a term is called in a sentence, and what it limits. */
public final class TermWords {
    private TermWords() {}

    /**
     * What a term lays down.
     *
     * @param term any term
     * @return for example "weight"
     */
    public static String of(Term term) {
        if (term instanceof Term.Weight) {
            return "weight";
        } else if (term instanceof Term.Thickness) {
            return "thickness";
        } else if (term instanceof Term.Lean) {
            return "lean";
        } else if (term instanceof Term.Refrigerated) {
            return "refrigeration";
        } else if (term instanceof Term.Temperature) {
            return "temperature";
        } else if (term instanceof Term.Age) {
            return "age";
        } else if (term instanceof Term.Life) {
            return "life";
        } else if (term instanceof Term.Pack) {
            return "pack";
        }
        return term instanceof Term.Claim ? "claim" : "label";
    }

    /**
     * What a term limits.
     *
     * @param term any term
     * @return the limit; nothing where it is not a matter of figures
     */
    public static Optional<Limit> limit(Term term) {
        if (term instanceof Term.Weight weight) {
            return Optional.of(weight.limit());
        } else if (term instanceof Term.Thickness thickness) {
            return Optional.of(thickness.limit());
        } else if (term instanceof Term.Lean lean) {
            return Optional.of(lean.limit());
        } else if (term instanceof Term.Temperature temperature) {
            return Optional.of(temperature.limit());
        } else if (term instanceof Term.Age age) {
            return Optional.of(age.limit());
        }
        return term instanceof Term.Life life ? Optional.of(life.limit()) : Optional.empty();
    }
}
