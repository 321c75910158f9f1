package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.NearestName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Side;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Holds a house's specification against what a buyer requires, clause by clause.
 *
 * <pre>{@code
 * Conformity answer = Conformance.of(house, buyer, Question.PLAIN).orElseThrow();
 * System.out.println(answer.overall().words());
 * }</pre>
 *
 * <p>The buyer's text is a requirement, or a specification of the buyer's own, of which the limits count and the expectations do
 * not. Work is linear in both trees but for the yields, which are worked out at two carcasses at most unless more are given.
 * Thread-safe.
 */
public final class Conformance {
    private Conformance() {}

    /**
     * Compares two texts.
     *
     * @param house a house's specification in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @param buyer what is required, in which they find none either
     * @param question what whoever compares adds to them
     * @return the answer; or an error of {@link ConformanceCode} if nothing can be compared
     */
    public static Result<Conformity> of(CutTree house, CutTree buyer, Question question) {
        List<Diagnostic> wrong = new ArrayList<>();
        if (house.isRequirement()) {
            wrong.add(Diagnostic.of(ConformanceCode.NOT_A_SPECIFICATION, title())
                    .with("title", house.specification().title())
                    .help("Give the house's specification first, and what the buyer requires after --to."));
        } else if (!isSame(house.species(), buyer.species())) {
            wrong.add(Diagnostic.of(ConformanceCode.OTHER_SPECIES, title())
                    .with("asked", buyer.species().name())
                    .with("held", house.species().name())
                    .help("Ask the buyer for a requirement for this animal, or take the specification for that one."));
        }
        wrong.addAll(unknown(question, house, buyer));
        if (asked(buyer).isEmpty()) {
            wrong.add(Diagnostic.of(ConformanceCode.NOTHING_ASKED, title())
                    .with("side", buyer.specification().side().words())
                    .help("Ask the buyer for limits; what a buyer expects is not asked."));
        }
        return Result.hasError(wrong)
                ? Result.failed(wrong)
                : Result.of(new Comparison(house, buyer, question).conformity(), wrong);
    }

    /**
     * What a text asks for, clause by clause, whatever house it is held against.
     *
     * @param buyer what is required, in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @return each clause with its place, in the order in which the answers to them stand
     */
    public static List<Stated> asked(CutTree buyer) {
        return Asked.items(buyer, new PieceIndex(buyer.species())).stream()
                .flatMap(item -> item.clauses().stream())
                .toList();
    }

    private static Place title() {
        return new Place.InTree(TreePath.ROOT, Aspect.TITLE);
    }

    private static boolean isSame(Species one, Species other) {
        return one.name().equals(other.name())
                || one.otherNames().stream().anyMatch(name -> name.name().equals(other.name()))
                || other.otherNames().stream().anyMatch(name -> name.name().equals(one.name()));
    }

    private static List<Diagnostic> unknown(Question question, CutTree house, CutTree buyer) {
        if (question.matches().isEmpty()) {
            return List.of();
        }
        PieceIndex pieces = new PieceIndex(house.species());
        List<Diagnostic> wrong = new ArrayList<>();
        Map<TreePath, TreePath> matches = question.matches();
        wrong.addAll(unknown(matches.values(), house, pieces));
        wrong.addAll(unknown(matches.keySet(), buyer, pieces));
        return wrong;
    }

    private static List<Diagnostic> unknown(Iterable<TreePath> paths, CutTree tree, PieceIndex pieces) {
        Matcher matcher = new Matcher(Offers.of(tree, pieces).all());
        List<Diagnostic> wrong = new ArrayList<>();
        for (TreePath path : paths) {
            if (matcher.at(path).isEmpty()) {
                Side side = tree.specification().side();
                Diagnostic finding = Diagnostic.of(ConformanceCode.MATCH_UNKNOWN, title())
                        .with("path", path.toString())
                        .with("side", side.words());
                wrong.add(NearestName.of(path.last(), matcher.names())
                        .map(near -> finding.help("Did you mean “" + near + "”?"))
                        .orElse(finding.help("Write the whole path, such as leg / topside.")));
            }
        }
        return wrong.stream().sorted(Comparator.comparing(Diagnostic::message)).toList();
    }
}
