package dev.gambrel.fuzzing;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.conformance.Answer;
import dev.gambrel.yields.conformance.Conformance;
import dev.gambrel.yields.conformance.Conformity;
import dev.gambrel.yields.conformance.Inside;
import dev.gambrel.yields.conformance.Overall;
import dev.gambrel.yields.conformance.Question;
import dev.gambrel.yields.conformance.Verdict;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A house's text held against a buyer's: it conforms only where every clause is met, and no clause is met by silence. */
public final class ConformanceTarget {
    private static final Limits LIMITS = new Limits(1 << 16, 20, 6, 4, 2_000, 2_000, 50);
    private static final double ROUNDING = 1e-6;

    private ConformanceTarget() {}

    /**
     * Holds two texts to it.
     *
     * @param file any bytes; {@code Folder} says how they make several files: the house's, the buyer's, and what they use
     */
    public static void fuzzerTestOneInput(byte[] file) {
        Folder folder = Folder.of(new String(file, StandardCharsets.UTF_8));
        Optional<CutTree> house = tree(folder, 0);
        Optional<CutTree> buyer = house.isPresent() && folder.files().size() > 1 ? tree(folder, 1) : Optional.empty();
        buyer.ifPresent(asked -> compared(house.orElseThrow(), asked));
    }

    private static Optional<CutTree> tree(Folder folder, int which) {
        return new SpecCompiler(LIMITS)
                .compile(folder.files().get(which), folder)
                .value()
                .map(Compilation::tree);
    }

    private static void compared(CutTree house, CutTree buyer) {
        TreeHolds.comesBack(buyer);
        Result<Conformity> result = Conformance.of(house, buyer, Question.PLAIN);
        FindingsHold.all(result.diagnostics());
        Holds.isSame(result, Conformance.of(house, buyer, Question.PLAIN), "what is compared twice");
        result.value().ifPresent(ConformanceTarget::isHonest);
    }

    private static void isHonest(Conformity conformity) {
        List<Answer> answers = conformity.answers();
        conformity.products().forEach(product -> FindingsHold.all(product.findings()));
        FindingsHold.all(answers.stream().map(Answer::reason).limit(100).toList());
        boolean allMet = !answers.isEmpty() && conformity.count(Verdict.MEETS) == answers.size();
        Overall overall = conformity.overall();
        Holds.isTrue(overall != Overall.CONFORMS || allMet, () -> "conforms, though not all is met: " + answers);
        Holds.isTrue(
                overall == Overall.DOES_NOT_CONFORM == conformity.count(Verdict.FAILS) > 0,
                () -> "what fails and the answer: " + answers);
        for (Answer answer : answers) {
            Holds.isTrue(
                    answer.verdict() != Verdict.MEETS || !answer.held().isEmpty(),
                    () -> "met by nothing that is laid down: " + answer);
            answer.inside().forEach(ConformanceTarget::isAShare);
        }
    }

    private static void isAShare(Inside inside) {
        double all = inside.light() + inside.within() + inside.heavy();
        boolean areShares = Math.min(inside.light(), Math.min(inside.within(), inside.heavy())) >= -ROUNDING;
        Holds.isTrue(areShares && Math.abs(all - 1) <= ROUNDING, () -> "shares of pieces: " + inside);
    }
}
