package dev.gambrel.yields.conformance.report;

import dev.gambrel.yields.conformance.Verdict;
import dev.gambrel.yields.conformance.report.ConformitySheet.Line;
import dev.gambrel.yields.conformance.report.ConformitySheet.Product;
import dev.gambrel.yields.conformance.report.ConformitySheet.Told;
import java.util.List;

/** A sheet as it is read on paper: a table for each product, why what is not met is not, and the answer last. */
public final class ConformityText {
    private static final int WIDTH = 100;
    private static final Columns TABLE = new Columns(List.of(10, 17, 22, 22, 21));
    private static final Columns REASON = new Columns(List.of(2, WIDTH - 4));
    private static final Columns UNDER = new Columns(List.of(4, WIDTH - 6));

    private final StringBuilder out = new StringBuilder();

    private ConformityText() {}

    /**
     * Sets a sheet in lines of 100 characters at most.
     *
     * @param sheet the sheet
     * @return lines, each ended by a line feed
     */
    public static String of(ConformitySheet sheet) {
        ConformityText text = new ConformityText();
        text.out.append("house: ").append(sheet.house()).append('\n');
        text.out.append("buyer: ").append(sheet.buyer()).append("\n\n");
        sheet.products().forEach(text::product);
        text.out.append(sheet.counts()).append('\n');
        text.out.append("Overall: ").append(sheet.overall().words()).append(".\n");
        return text.out.toString();
    }

    private void product(Product product) {
        out.append(product.asked());
        out.append(product.matched().isEmpty() ? ", matched to nothing" : ", matched to " + product.matched());
        out.append('\n');
        product.findings().forEach(this::told);
        if (!product.lines().isEmpty()) {
            TABLE.print(List.of("verdict", "about", "asked", "the house lays down", "margin"), out);
            product.lines().forEach(line -> TABLE.print(cells(line), out));
        }
        product.lines().stream()
                .filter(line ->
                        line.verdict() != Verdict.MEETS || !line.expected().isEmpty())
                .forEach(this::reason);
        out.append('\n');
    }

    private static List<String> cells(Line line) {
        return List.of(
                line.verdict().words(),
                line.about(),
                line.asked(),
                line.held().isEmpty() ? "nothing" : line.held(),
                line.margin().isEmpty() ? "-" : line.margin());
    }

    private void reason(Line line) {
        Told why = line.why();
        REASON.print(List.of("-", line.about() + ": " + line.verdict().words() + ". " + why.sentence()), out);
        line.expected().forEach(sentence -> UNDER.print(List.of("", sentence), out));
        places(why);
    }

    private void told(Told told) {
        REASON.print(List.of("-", told.sentence()), out);
        told.help().forEach(help -> REASON.print(List.of("→", help), out));
        places(told);
    }

    private void places(Told told) {
        String house = told.house().isEmpty() ? "" : "; house: " + String.join(", ", told.house());
        UNDER.print(List.of("", "buyer: " + told.buyer() + house + " (" + told.code() + ")"), out);
    }
}
