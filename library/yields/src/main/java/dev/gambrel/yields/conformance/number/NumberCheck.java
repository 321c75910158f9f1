package dev.gambrel.yields.conformance.number;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.references.claims.Claim;
import dev.gambrel.references.claims.Comparison;
import dev.gambrel.references.source.Citation;
import dev.gambrel.references.unece.MeatCode;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Holds the reference numbers of a product against the words beside them. A number that is not held, or of which editions
 * differ, contradicts nothing.
 */
public final class NumberCheck {
    private final Species species;
    private final List<Stated> stated;

    private NumberCheck(Species species, List<Stated> stated) {
        this.species = species;
        this.stated = stated;
    }

    /**
     * What the numbers of a product that a buyer asks for say against the words beside them.
     *
     * @param species the animal that the text is for
     * @param stated all that is laid down of the product
     * @return a finding for each contradiction, at the number, with the words as a related place
     */
    public static List<Diagnostic> ofBuyer(Species species, List<Stated> stated) {
        return new NumberCheck(species, stated).findings(NumberCode.NUMBER_AGAINST_WORDS);
    }

    /**
     * The same of a product of the house's.
     *
     * @param species the animal that the text is for
     * @param stated all that is laid down of the product
     * @param asked the place in the buyer's tree that the product answers to, where the findings stand
     * @return a finding for each contradiction that the house has not settled, with both places related
     */
    public static List<Diagnostic> ofHouse(Species species, List<Stated> stated, Place.InTree asked) {
        return new NumberCheck(species, stated)
                .findings(NumberCode.HOUSE_NUMBER_AGAINST_WORDS).stream()
                        .filter(finding -> finding.code() == NumberCode.HOUSE_NUMBER_AGAINST_WORDS)
                        .map(finding -> finding.at(place -> place.equals(finding.place()) ? asked : place)
                                .related(finding.place(), "the number"))
                        .toList();
    }

    private List<Diagnostic> findings(NumberCode conflict) {
        List<Diagnostic> found = new ArrayList<>();
        for (Stated number : stated) {
            if (number.clause() instanceof Clause.Numbered numbered) {
                unreadable(number, numbered.reference()).ifPresent(found::add);
                against(number, numbered.reference(), conflict, found);
            }
        }
        return found;
    }

    private static Optional<Diagnostic> unreadable(Stated number, Reference reference) {
        Optional<Result<MeatCode>> code = PublishedNumber.meatCode(reference);
        return code.filter(result -> result.value().isEmpty())
                .map(result -> Diagnostic.of(NumberCode.NO_MEAT_CODE, number.at())
                        .with("number", number.clause().words())
                        .with("why", result.diagnostics().get(0).message())
                        .help("Ask whoever wrote it for the code again."));
    }

    private void against(Stated number, Reference reference, NumberCode conflict, List<Diagnostic> found) {
        PublishedNumber published = PublishedNumber.of(reference);
        boolean wordsRule = reference.rules() == Reference.Rules.WORDS;
        NumberCode code = wordsRule ? NumberCode.NUMBER_GIVES_WAY : conflict;
        Claims.animal(species)
                .flatMap(animal -> conflict(published, new Claim.OfAnimal(animal), reference))
                .ifPresent(comparison -> found.add(finding(code, number, comparison)));
        for (Stated words : stated) {
            for (Claim claim : Claims.of(words.clause())) {
                conflict(published, claim, reference)
                        .ifPresent(comparison ->
                                found.add(finding(code, number, comparison).related(words.at(), "the words")));
            }
        }
    }

    private static Optional<Comparison> conflict(PublishedNumber published, Claim claim, Reference reference) {
        return published.compared(claim, reference.range()).stream()
                .filter(comparison -> comparison.agreement().isConflict())
                .findFirst();
    }

    private static Diagnostic finding(NumberCode sure, Stated number, Comparison comparison) {
        NumberCode code = comparison.restsOnMemory() ? NumberCode.NUMBER_PERHAPS_AGAINST_WORDS : sure;
        Diagnostic finding = Diagnostic.of(code, number.at())
                .with("number", number.clause().words())
                .with("published", comparison.published())
                .with("words", comparison.claim().toString());
        for (Citation source : comparison.sources()) {
            finding = finding.note("What the number means: " + source + ".");
        }
        return code.severity() == Severity.NOTE
                ? finding
                : finding.help("Ask which holds, or write it after the number: words rule, or number rules.");
    }
}
