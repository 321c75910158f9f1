package dev.gambrel.references.gs1;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.references.code.ReferenceCode;
import dev.gambrel.references.unece.MeatCode;
import dev.gambrel.references.unece.MeatCodes;
import dev.gambrel.text.SourceText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Holds elements that are right each by itself against one another. */
final class ElementRules {
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final int THIS_CENTURY = 2000;
    private static final List<String> MADE = List.of("11", "13");
    private static final List<String> ENDS = List.of("15", "16", "17");

    private final SourceText text;
    private final List<Written> elements;
    private final Map<String, Written> first = new HashMap<>();
    private final List<Diagnostic> findings = new ArrayList<>();

    ElementRules(SourceText text, List<Written> elements) {
        this.text = text;
        this.elements = elements;
    }

    List<Diagnostic> findings() {
        for (Written element : elements) {
            twice(element);
            first.putIfAbsent(pattern(element), element);
        }
        for (Written element : elements) {
            partners(element);
            excluded(element);
            meatCode(element);
        }
        weights();
        dates();
        return List.copyOf(findings);
    }

    private static String pattern(Written element) {
        Identifier identifier = element.element().identifier();
        return identifier.form() == Form.PROCESSOR ? element.element().digits() : identifier.pattern();
    }

    private void twice(Written element) {
        Written before = first.get(pattern(element));
        if (before == null) {
            return;
        }
        if (!before.element().digits().equals(element.element().digits())) {
            findings.add(at(ReferenceCode.GS1_EXCLUDED, element)
                    .with("other", before.element().digits())
                    .related(place(before), "here already")
                    .help("Leave one of the two: they say the same kind of thing with other decimals."));
        } else if (before.element().value().equals(element.element().value())) {
            findings.add(at(ReferenceCode.GS1_REPEATED, element).related(place(before), "here already"));
        } else {
            findings.add(disagree(
                    before, element, before.element().value(), element.element().value()));
        }
    }

    private Diagnostic disagree(Written before, Written element, Object said, Object says) {
        return at(ReferenceCode.GS1_DISAGREES, element)
                .with("value", says)
                .with("other", before.element().digits())
                .with("before", said)
                .related(place(before), "here it says " + said)
                .help("Only one can hold; look at the goods and at the label, and do not guess.");
    }

    private void partners(Written element) {
        for (List<String> group : element.element().identifier().partners()) {
            if (group.stream().noneMatch(first::containsKey)) {
                findings.add(at(ReferenceCode.GS1_ALONE, element)
                        .with(
                                "partners",
                                group.stream().map(name -> "(" + name + ")").collect(Collectors.joining(" or ")))
                        .help("If the label has several bar codes, hand all of them over together."));
            }
        }
    }

    private void excluded(Written element) {
        for (String other : element.element().identifier().excluded()) {
            Optional.ofNullable(first.get(other))
                    .ifPresent(found -> findings.add(at(ReferenceCode.GS1_EXCLUDED, element)
                            .with("other", other)
                            .related(place(found), "here it stands")
                            .help("Look which of the two the label means, and leave the other.")));
        }
    }

    private void meatCode(Written element) {
        if (!element.element().identifier().pattern().equals("7002")) {
            return;
        }
        Result<MeatCode> code = MeatCodes.decode(text, element.value());
        if (code.value().isPresent()) {
            findings.addAll(code.diagnostics());
            return;
        }
        Diagnostic finding = Diagnostic.of(ReferenceCode.GS1_NOT_A_MEAT_CODE, new Place.InText(text, element.value()))
                .with("value", element.element().value());
        for (Diagnostic why : code.diagnostics()) {
            finding = finding.note(why.message());
        }
        findings.add(finding.help("(7002) may carry any text; ask who printed the label what it means."));
    }

    /** Two weights agree where rounding alone can be between them. */
    private void weights() {
        Written kilograms = first.get("310n");
        Written pounds = first.get("320n");
        Written item = first.get("01");
        if (kilograms != null && pounds != null) {
            Quantity metric = kilograms.element().weight().orElseThrow();
            Quantity avoirdupois = pounds.element().weight().orElseThrow();
            BigDecimal gap = metric.common().subtract(avoirdupois.common()).abs();
            if (gap.compareTo(halfStep(metric).add(halfStep(avoirdupois))) > 0) {
                findings.add(disagree(kilograms, pounds, metric, avoirdupois));
            }
        }
        if (item != null
                && kilograms == null
                && pounds == null
                && new Gtin(item.element().value()).isVaryingMeasure()) {
            findings.add(
                    Diagnostic.of(ReferenceCode.GS1_NO_WEIGHT, place(item))
                            .with("number", item.element().value())
                            .help(
                                    "Look whether the weight stands in another bar code of the label; if so read both together."));
        }
    }

    private static BigDecimal halfStep(Quantity weight) {
        return HALF.movePointLeft(weight.amount().scale())
                .multiply(weight.unit().factor());
    }

    private void dates() {
        for (String made : MADE) {
            for (String end : ENDS) {
                if (first.containsKey(made) && first.containsKey(end)) {
                    order(first.get(made), first.get(end));
                }
            }
        }
    }

    /** The century does not matter: both are read as from the year of the earlier. A month without a day has room for both. */
    private void order(Written made, Written end) {
        Gs1Date start = made.element().date().orElseThrow();
        Gs1Date stop = end.element().date().orElseThrow();
        int reading = THIS_CENTURY + start.year();
        int gap = number(stop, reading, 99) - number(start, reading, 0);
        if (gap < 0) {
            findings.add(at(ReferenceCode.GS1_ORDER_OF_DATES, end)
                    .with("value", stop)
                    .with("other", made.element().digits())
                    .with("before", start)
                    .related(place(made), "it was made or packed then")
                    .help("Hold the goods back until it is clear which date is right."));
        }
    }

    private static int number(Gs1Date date, int reading, int openDay) {
        return (date.fullYear(reading) * 100 + date.month()) * 100 + (date.isMonth() ? openDay : date.day());
    }

    private Place place(Written element) {
        return new Place.InText(text, element.place());
    }

    private Diagnostic at(ReferenceCode code, Written element) {
        return Diagnostic.of(code, place(element))
                .with("identifier", element.element().digits())
                .with("title", element.element().identifier().title());
    }
}
