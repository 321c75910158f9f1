package dev.gambrel.json;

import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.ObjectReader;
import dev.gambrel.json.located.Reading;
import dev.gambrel.json.located.Readings;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.tree.term.Refrigeration;
import dev.gambrel.tree.term.Term;
import java.util.List;

/** Reads terms of supply. */
final class TermReader {
    static final Reading<Judged> JUDGED = Readings.word(List.of(Judged.VISUAL, Judged.CHEMICAL), Judged::words);

    static final Reading<Term> TERM = new Readings.Kinds<Term>()
            .or("weight", in -> new Term.Weight(limit(in, Dimension.WEIGHT), outside(in)))
            .or("thickness", in -> new Term.Thickness(limit(in, Dimension.LENGTH), outside(in)))
            .or("lean", in -> new Term.Lean(limit(in, Dimension.SHARE), judged(in)))
            .or("chilled", in -> new Term.Refrigerated(Refrigeration.CHILLED))
            .or("frozen", in -> new Term.Refrigerated(Refrigeration.FROZEN))
            .or(
                    "temperature",
                    in -> new Term.Temperature(
                            limit(in, Dimension.TEMPERATURE), in.optional("where", "", Readings::text)))
            .or(
                    "age",
                    in -> new Term.Age(
                            limit(in, Dimension.TIME),
                            in.optional("manner", "", Readings::text),
                            in.optional("since", "", Readings::text)))
            .or("life", in -> new Term.Life(limit(in, Dimension.TIME)))
            .or(
                    "pack",
                    in -> new Term.Pack(
                            in.optional("together", 0, Readings::count),
                            in.need("container", "what it is packed in", Readings::name)))
            .or("claim", in -> new Term.Claim(DescriptionReader.name(in)))
            .or("label", in -> new Term.Label(DescriptionReader.name(in)));

    private TermReader() {}

    static Outside outside(ObjectReader in) {
        return in.optional("outside", new Outside.None(), TermReader::outOf);
    }

    private static Outside outOf(Located value, Findings findings) {
        Reading<List<Integer>> numbers = Readings.object(in -> List.of(
                in.need("most", "how many may be outside", Readings::count),
                in.need("of", "out of how many", Readings::count)));
        List<Integer> read = numbers.read(value, findings);
        int most = read.get(0);
        int of = read.get(1);
        if (most >= 1 && of > most) {
            return new Outside.OutOf(most, of);
        }
        findings.add(findings.at(JsonCode.WRONG_TYPE, value.pointer(), value.span())
                .with("found", most + " of " + of)
                .with("allowed", "so many out of more, such as 1 of 20"));
        return new Outside.None();
    }

    private static Limit limit(ObjectReader in, Dimension dimension) {
        return in.need("limit", "what is accepted", FigureReader.limit(dimension));
    }

    private static Judged judged(ObjectReader in) {
        return in.optional("judged", Judged.NOT_STATED, JUDGED);
    }
}
