package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.NearestName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.number.NumberCheck;
import dev.gambrel.yields.conformance.number.WeightRanges;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** One comparison: everything that is asked for, matched and answered in the buyer's order. */
final class Comparison {
    private static final int MOST_NAMED = Matcher.MOST - 1;

    private final CutTree house;
    private final CutTree buyer;
    private final Question question;
    private final Offers offers;
    private final List<Asked.Item> asked;
    private final Matcher matcher;
    private final PieceWeights weights;
    private final Map<TreePath, Offer> matched = new HashMap<>();

    Comparison(CutTree house, CutTree buyer, Question question) {
        PieceIndex pieces = new PieceIndex(house.species());
        this.house = house;
        this.buyer = buyer;
        this.question = question;
        this.offers = Offers.of(house, pieces);
        this.asked = Asked.items(buyer, pieces);
        this.matcher = new Matcher(offers.all());
        this.weights = new PieceWeights(house, question);
    }

    Conformity conformity() {
        List<ProductAnswer> answers = new ArrayList<>();
        asked.forEach(item -> answers.addAll(answers(item)));
        return new Conformity(house.specification(), buyer.specification(), answers);
    }

    /** One answer; none for what only holds other things. */
    private List<ProductAnswer> answers(Asked.Item item) {
        List<Offer> found = found(item.offer());
        if (found.size() == 1) {
            matched.put(item.offer().product().path(), found.get(0));
        }
        if (item.isOnlyPath()) {
            return List.of();
        }
        return List.of(found.size() == 1 ? answered(item, found.get(0)) : open(item, found));
    }

    private ProductAnswer open(Asked.Item item, List<Offer> found) {
        List<Answer> open = item.clauses().stream()
                .map(clause ->
                        new Finding(clause, List.of()).answer(ConformanceCode.NOTHING_TO_COMPARE, Verdict.NOT_STATED))
                .toList();
        Diagnostic finding = found.isEmpty() ? none(item.offer()) : several(item.offer(), found);
        List<Diagnostic> findings = new ArrayList<>(List.of(finding));
        findings.addAll(NumberCheck.ofBuyer(buyer.species(), item.clauses()));
        return new ProductAnswer(item.offer().product().path(), List.of(), open, findings);
    }

    private List<Offer> found(Offer wanted) {
        if (wanted.product().kind() == Product.Kind.CARCASS) {
            return List.of(offers.carcass());
        }
        TreePath path = wanted.product().path();
        TreePath chosen = question.matches().get(path);
        if (chosen != null) {
            return matcher.at(chosen);
        }
        Offer parent = matched.get(path.parent());
        boolean isNested = path.names().size() > 1 && parent != null;
        return matcher.matching(wanted, isNested ? offers.within(parent) : offers.everything());
    }

    private ProductAnswer answered(Asked.Item item, Offer offer) {
        Judge judge = new Judge(offer);
        List<Answer> answers = item.clauses().stream()
                .map(clause -> placed(weighed(judge.answer(clause), offer), offer))
                .toList();
        return new ProductAnswer(
                item.offer().product().path(), List.of(offer.product()), answers, numbers(item, offer));
    }

    /** What reference numbers say against the words beside them, in either text. */
    private List<Diagnostic> numbers(Asked.Item item, Offer offer) {
        List<Diagnostic> found = new ArrayList<>(NumberCheck.ofBuyer(buyer.species(), item.clauses()));
        item.clauses().forEach(clause -> WeightRanges.unknown(clause).ifPresent(found::add));
        Place.InTree at = new Place.InTree(item.offer().product().path(), Aspect.NAME);
        found.addAll(NumberCheck.ofHouse(house.species(), offer.own(), at));
        return found;
    }

    /** A limit on weight is told with the share of pieces that is expected inside it, which proves nothing. */
    private Answer weighed(Answer answer, Offer offer) {
        if (answer.asked().clause().quality() != Quality.WEIGHT) {
            return answer;
        }
        Limit limit = ((Clause.Limited) answer.asked().clause()).limit();
        List<Inside> inside = weights.inside(offer.product(), limit);
        boolean isOnlyExpected =
                answer.reason().code() == ConformanceCode.NOTHING_SAID && weights.isExpected(offer.product());
        Diagnostic reason = isOnlyExpected
                ? new Finding(answer.asked(), List.of())
                        .reason(ConformanceCode.ONLY_EXPECTED)
                        .related(new Place.InTree(offer.product().path(), Aspect.SHARE), "what the house expects")
                : answer.reason();
        return new Answer(answer.asked(), answer.verdict(), answer.held(), answer.margin(), inside, reason);
    }

    /** Where the house lays down nothing, the place is what it was matched to; a stream has none of its own. */
    private static Answer placed(Answer answer, Offer offer) {
        boolean hasPlace = !answer.reason().related().isEmpty();
        if (hasPlace || offer.product().kind() == Product.Kind.STREAM) {
            return answer;
        }
        Diagnostic reason =
                answer.reason().related(new Place.InTree(offer.product().path(), Aspect.NAME), "what it is matched to");
        return new Answer(answer.asked(), answer.verdict(), answer.held(), answer.margin(), answer.inside(), reason);
    }

    private Diagnostic none(Offer wanted) {
        Diagnostic finding = Diagnostic.of(ConformanceCode.NO_SUCH_PRODUCT, at(wanted))
                .with("product", wanted.names().name());
        return NearestName.of(wanted.names().name(), matcher.names())
                .map(near -> finding.help("The nearest name is “" + near + "”. If that is meant, say so: "
                                + match(wanted, near.text()))
                        .help("Or ask the buyer what it is, by its number in a published scheme."))
                .orElse(finding.help("Ask the buyer what it is, by its number in a published scheme."));
    }

    private Diagnostic several(Offer wanted, List<Offer> found) {
        List<String> paths =
                found.stream().map(offer -> offer.product().path().toString()).toList();
        String named = paths.stream().limit(MOST_NAMED).collect(Collectors.joining("; "));
        String more = paths.size() > MOST_NAMED ? "; and more" : "";
        Diagnostic finding = Diagnostic.of(ConformanceCode.SEVERAL_PRODUCTS, at(wanted))
                .with("product", wanted.names().name())
                .with("products", named + more)
                .help("Say which is meant: " + match(wanted, paths.get(0)));
        for (Offer offer : found.subList(0, Math.min(MOST_NAMED, found.size()))) {
            finding = finding.related(new Place.InTree(offer.product().path(), Aspect.NAME), "one of them");
        }
        return finding;
    }

    private static String match(Offer wanted, String path) {
        return "--match \"" + wanted.product().path() + " = " + path + "\"";
    }

    private static Place at(Offer wanted) {
        return new Place.InTree(wanted.product().path(), Aspect.NAME);
    }
}
