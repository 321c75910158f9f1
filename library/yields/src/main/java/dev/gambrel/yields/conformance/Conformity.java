package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.Severity;
import dev.gambrel.tree.Specification;
import java.util.List;

/**
 * Whether a house's specification gives what a buyer requires.
 *
 * @param house the house's title and revision
 * @param buyer the buyer's title and revision
 * @param products what can be said of each thing that is asked for, in the buyer's order
 */
public record Conformity(Specification house, Specification buyer, List<ProductAnswer> products) {
    /** Copies the list. */
    public Conformity {
        products = List.copyOf(products);
    }

    /**
     * All answers, in order.
     *
     * @return one for each clause of each product
     */
    public List<Answer> answers() {
        return products.stream().flatMap(product -> product.answers().stream()).toList();
    }

    /**
     * How many clauses have a verdict.
     *
     * @param verdict the verdict
     * @return how many
     */
    public long count(Verdict verdict) {
        return answers().stream().filter(answer -> answer.verdict() == verdict).count();
    }

    /**
     * What can be said of the whole: it conforms only if something is asked and every clause is met.
     *
     * @return the overall answer
     */
    public Overall overall() {
        if (count(Verdict.FAILS) > 0) {
            return Overall.DOES_NOT_CONFORM;
        }
        boolean open = count(Verdict.NOT_STATED) > 0
                || answers().isEmpty()
                || products.stream()
                        .flatMap(product -> product.findings().stream())
                        .anyMatch(finding -> finding.severity() != Severity.NOTE);
        return open ? Overall.NOT_SHOWN : Overall.CONFORMS;
    }
}
