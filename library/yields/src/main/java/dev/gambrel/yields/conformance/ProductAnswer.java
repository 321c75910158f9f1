package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import java.util.List;

/**
 * What can be said of one thing that the buyer asks for.
 *
 * @param asked its path in the buyer's tree; the empty path for the carcass
 * @param matched the path of what the house has for it; none or one
 * @param answers an answer to each clause, in the order in which the buyer lays them down
 * @param findings what stands in the way of an answer: no such product, several, a number against the words beside it
 */
public record ProductAnswer(TreePath asked, List<Product> matched, List<Answer> answers, List<Diagnostic> findings) {
    /** Copies the lists. */
    public ProductAnswer {
        matched = List.copyOf(matched);
        answers = List.copyOf(answers);
        findings = List.copyOf(findings);
    }
}
