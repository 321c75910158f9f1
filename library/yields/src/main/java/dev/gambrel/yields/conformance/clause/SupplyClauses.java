package dev.gambrel.yields.conformance.clause;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.tree.term.Term;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Clauses of terms of supply, of portions and of streams. */
public final class SupplyClauses {
    private static final Outside NONE = new Outside.None();

    private SupplyClauses() {}

    /**
     * What terms lay down.
     *
     * @param terms terms of a cut or of everything
     * @param path the cut's path; the empty path for everything
     * @return each clause with its place
     */
    public static List<Stated> of(List<Term> terms, TreePath path) {
        List<Stated> stated = new ArrayList<>(terms.size());
        for (int i = 0; i < terms.size(); i++) {
            stated.add(new Stated(clause(terms.get(i)), new Place.InTree(path, Aspect.SUPPLY, i)));
        }
        return stated;
    }

    private static Clause clause(Term term) {
        if (term instanceof Term.Weight weight) {
            return new Clause.Limited(Quality.WEIGHT, weight.limit(), weight.outside(), Clause.How.NOT_SAID);
        } else if (term instanceof Term.Thickness thick) {
            return new Clause.Limited(Quality.THICKNESS, thick.limit(), thick.outside(), Clause.How.NOT_SAID);
        } else if (term instanceof Term.Lean lean) {
            return limited(Quality.LEAN, lean.limit(), lean.judged().words(), "");
        } else if (term instanceof Term.Temperature temperature) {
            return limited(Quality.TEMPERATURE, temperature.limit(), "", temperature.where());
        } else if (term instanceof Term.Age age) {
            return limited(Quality.AGE, age.limit(), age.manner(), age.since());
        } else if (term instanceof Term.Life life) {
            return limited(Quality.LIFE, life.limit(), "", "");
        }
        return withoutLimit(term);
    }

    private static Clause withoutLimit(Term term) {
        if (term instanceof Term.Refrigerated refrigerated) {
            return new Clause.State(Quality.REFRIGERATION, refrigerated.state().words());
        } else if (term instanceof Term.Pack pack) {
            return new Clause.Packed(pack.together(), pack.container());
        } else if (term instanceof Term.Claim claim) {
            return new Clause.Carried(Quality.CLAIM, claim.claim());
        }
        return new Clause.Carried(Quality.LABEL, ((Term.Label) term).what());
    }

    private static Clause limited(Quality quality, Limit limit, String by, String from) {
        return new Clause.Limited(quality, limit, NONE, new Clause.How(by, from));
    }

    /**
     * What is laid down of a portion.
     *
     * @param portion the portion
     * @param path its path
     * @return each clause with its place
     */
    public static List<Stated> ofPortion(Portion portion, TreePath path) {
        List<Stated> stated = new ArrayList<>(3);
        Acceptance accepted = portion.acceptance();
        if (!(accepted.weight() instanceof Limit.NotStated)) {
            Clause weight =
                    new Clause.Limited(Quality.WEIGHT, accepted.weight(), accepted.outside(), Clause.How.NOT_SAID);
            stated.add(new Stated(weight, new Place.InTree(path, Aspect.LIMIT)));
        }
        if (!(accepted.thickness() instanceof Limit.NotStated)) {
            Clause thickness = new Clause.Limited(
                    Quality.THICKNESS, accepted.thickness(), accepted.outside(), Clause.How.NOT_SAID);
            stated.add(new Stated(thickness, new Place.InTree(path, Aspect.THICKNESS_LIMIT)));
        }
        if (accepted.fewest() instanceof Fewest.From from) {
            Quantity number = new Quantity(BigDecimal.valueOf(from.number()), Unit.NUMBER);
            Clause fewest = limited(
                    Quality.FEWEST,
                    new Limit.AtLeast(number),
                    "from a " + from.whole().words(),
                    "");
            stated.add(new Stated(fewest, new Place.InTree(path, Aspect.FEWEST)));
        }
        if (portion.finish().pack() instanceof Finish.Pack.Together pack) {
            Clause packed = new Clause.Packed(pack.number(), pack.container());
            stated.add(new Stated(packed, new Place.InTree(path, Aspect.PACK)));
        }
        return stated;
    }

    /**
     * How lean a stream is meant to be, which is what the house undertakes of it.
     *
     * @param stream the stream
     * @param index which of the tree's streams it is, from 0
     * @return the clause with its place; none where nothing was said
     */
    public static List<Stated> ofStream(Stream stream, int index) {
        if (stream.lean() instanceof Stream.Lean.Stated lean) {
            Clause clause = limited(
                    Quality.LEAN,
                    new Limit.AtLeast(lean.percent()),
                    lean.judged().words(),
                    "");
            return List.of(new Stated(clause, new Place.InTree(TreePath.ROOT, Aspect.LEAN, index)));
        }
        return List.of();
    }
}
