package dev.gambrel.examples;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.conformance.Answer;
import dev.gambrel.yields.conformance.Conformance;
import dev.gambrel.yields.conformance.Conformity;
import dev.gambrel.yields.conformance.Question;
import dev.gambrel.yields.conformance.Verdict;
import java.nio.file.Path;

/** Whether a house's specification gives what a buyer requires, and why not. */
public final class CheckBuyersRequirement {
    private CheckBuyersRequirement() {}

    /**
     * Prints what is not met, and the answer.
     *
     * @param args the house's specification and the buyer's requirement
     */
    public static void main(String[] args) {
        CutTree house =
                new SpecCompiler().compile(Path.of(args[0])).orElseThrow().tree();
        CutTree buyer =
                new SpecCompiler().compile(Path.of(args[1])).orElseThrow().tree();
        Conformity conformity = Conformance.of(house, buyer, Question.PLAIN).orElseThrow();
        for (Answer answer : conformity.answers()) {
            if (answer.verdict() != Verdict.MEETS) {
                System.out.println(
                        answer.verdict().words() + ": " + answer.reason().message());
            }
        }
        System.out.println(conformity.overall().words());
    }
}
