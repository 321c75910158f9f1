package dev.gambrel.yields.conformance.report;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.tree.Specification;
import dev.gambrel.yields.conformance.Answer;
import dev.gambrel.yields.conformance.Conformity;
import dev.gambrel.yields.conformance.Margin;
import dev.gambrel.yields.conformance.Overall;
import dev.gambrel.yields.conformance.ProductAnswer;
import dev.gambrel.yields.conformance.Verdict;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.List;
import java.util.stream.Collectors;

/**
 * An answer in words, each harmless to print, in the order in which it is read.
 *
 * @param house the house's title and revision
 * @param buyer the buyer's title and revision
 * @param products what is asked for, in the buyer's order
 * @param counts such as "4 meet, 3 fail, 3 not stated"
 * @param overall the answer as a whole
 */
public record ConformitySheet(String house, String buyer, List<Product> products, String counts, Overall overall) {
    /** Copies the list. */
    public ConformitySheet {
        products = List.copyOf(products);
    }

    /**
     * Something that is asked for.
     *
     * @param asked what the buyer calls it
     * @param matched the path of what the house has for it; empty where that is not known
     * @param findings what stands in the way of an answer
     * @param lines a line for each clause
     */
    public record Product(String asked, String matched, List<Told> findings, List<Line> lines) {
        /** Copies the lists. */
        public Product {
            findings = List.copyOf(findings);
            lines = List.copyOf(lines);
        }
    }

    /**
     * A clause with its answer.
     *
     * @param verdict whether it is met
     * @param about what it is about
     * @param asked what the buyer requires
     * @param held what the house lays down; empty where it lays down nothing
     * @param margin how far it is met or failed, in the clause's unit; empty where there are no figures
     * @param expected sentences about how many pieces would be inside
     * @param why the reason
     */
    public record Line(
            Verdict verdict, String about, String asked, String held, String margin, List<String> expected, Told why) {
        /** Copies the list. */
        public Line {
            expected = List.copyOf(expected);
        }
    }

    /**
     * A finding with its places.
     *
     * @param code its code
     * @param sentence what it says
     * @param help what to do next
     * @param buyer where that stands in the buyer's text, places with commas between
     * @param house where that stands in the house's; empty where it stands nowhere
     */
    public record Told(String code, String sentence, List<String> help, String buyer, List<String> house) {
        /** Copies the lists. */
        public Told {
            help = List.copyOf(help);
            house = List.copyOf(house);
        }
    }

    /**
     * Puts an answer into words.
     *
     * @param conformity the answer
     * @param texts the texts that were compared
     * @return the sheet
     */
    public static ConformitySheet of(Conformity conformity, ComparedTexts texts) {
        return new ConformitySheet(
                titled(conformity.house()),
                titled(conformity.buyer()),
                conformity.products().stream()
                        .map(product -> product(product, texts))
                        .toList(),
                counts(conformity),
                conformity.overall());
    }

    private static String titled(Specification specification) {
        return Visible.text(specification.title()) + ", revision " + specification.revision();
    }

    private static String counts(Conformity conformity) {
        return conformity.count(Verdict.MEETS) + " meet, " + conformity.count(Verdict.FAILS) + " fail, "
                + conformity.count(Verdict.NOT_STATED) + " not stated";
    }

    private static Product product(ProductAnswer product, ComparedTexts texts) {
        String asked = product.asked().equals(TreePath.ROOT)
                ? "carcass"
                : product.asked().toString();
        String matched = product.matched().stream()
                .map(held -> held.path().equals(TreePath.ROOT)
                        ? "carcass"
                        : held.path().toString())
                .collect(Collectors.joining());
        return new Product(
                Visible.text(asked),
                Visible.text(matched),
                product.findings().stream().map(finding -> told(finding, texts)).toList(),
                product.answers().stream().map(answer -> line(answer, texts)).toList());
    }

    private static Line line(Answer answer, ComparedTexts texts) {
        Stated asked = answer.asked();
        String held = answer.held().stream()
                .map(stated -> stated.clause().words())
                .distinct()
                .collect(Collectors.joining("; "));
        String margin = answer.margin() instanceof Margin.At at
                ? at.amount() + " " + at.end().words()
                : "";
        return new Line(
                answer.verdict(),
                asked.clause().quality().words(),
                Visible.text(asked.clause().words()),
                Visible.text(held),
                margin,
                ExpectedInside.of(answer),
                told(answer.reason(), texts));
    }

    private static Told told(Diagnostic finding, ComparedTexts texts) {
        FindingPlaces places = FindingPlaces.of(finding);
        return new Told(
                finding.code().id(),
                Visible.text(finding.message()),
                finding.help().stream().map(Visible::text).toList(),
                String.join(", ", where(places.buyer(), texts.buyer())),
                where(places.house(), texts.house()));
    }

    private static List<String> where(List<Place> places, ComparedTexts.Text in) {
        return places.stream().map(in::where).distinct().toList();
    }
}
