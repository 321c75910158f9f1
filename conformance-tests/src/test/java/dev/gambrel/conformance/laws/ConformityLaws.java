package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.conformance.Answer;
import dev.gambrel.yields.conformance.Conformance;
import dev.gambrel.yields.conformance.Conformity;
import dev.gambrel.yields.conformance.Overall;
import dev.gambrel.yields.conformance.Question;
import dev.gambrel.yields.conformance.Verdict;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds of every answer, whatever is asked. */
class ConformityLaws {
    private static final List<String> LINES = List.of(
            "weight between 3 kg and 4 kg, at most 1 in 20 outside",
            "thickness at least 20 mm",
            "lean at least 90 % visual",
            "keep chilled, at most 3 °C at the centre",
            "age at least 7 days from kill, on the bone",
            "life at least 14 days",
            "pack in vacuum bag",
            "claim farmed, free range",
            "label lot, kill date",
            "remove silverskin",
            "trim fat to at most 5 mm on average and at most 8 mm at any point",
            "reference UNECE 4800 edition 2006");

    @Provide
    Arbitrary<List<String>> someLines() {
        return Arbitraries.of(LINES).list().uniqueElements().ofMinSize(1);
    }

    private static CutTree compiled(String text) {
        return new SpecCompiler()
                .compile(new SourceText("sheet.cuts", text), Sources.none())
                .orElseThrow()
                .tree();
    }

    private static CutTree house(List<String> lines) {
        return compiled("language 1\nuse \"catalogue:sheep\"\nspecification \"House\" revision 1 for sheep\n"
                + "carcass cold, 20 kg to 24 kg\nstream mince, saleable\ncut leg 33 %, two per carcass {\n"
                + lines.stream().map(ConformityLaws::homed).collect(Collectors.joining("\n")) + "\n}\nrest -> mince\n");
    }

    /** What comes off a house's cut goes somewhere. */
    private static String homed(String line) {
        return line.startsWith("trim") || line.startsWith("remove") ? line + " 1 % -> mince" : line;
    }

    private static CutTree buyer(List<String> lines) {
        return compiled("language 1\nuse \"catalogue:sheep\"\nrequirement \"Buyer\" revision 1 for sheep\ncut leg {\n"
                + String.join("\n", lines) + "\n}\n");
    }

    private static Conformity answer(List<String> house, List<String> buyer) {
        return Conformance.of(house(house), buyer(buyer), Question.PLAIN).orElseThrow();
    }

    private static Verdict verdict(String house, String buyer) {
        return answer(List.of(house), List.of(buyer)).answers().get(0).verdict();
    }

    @Property(tries = 50)
    void nothing_asked_is_never_conformed_to(@ForAll("someLines") List<String> held) {
        assertEquals(Overall.NOT_SHOWN, answer(held, List.of()).overall());
    }

    @Property(tries = 100)
    void whoever_lays_down_all_that_is_asked_conforms(@ForAll("someLines") List<String> asked) {
        assertEquals(Overall.CONFORMS, answer(asked, asked).overall());
    }

    @Property(tries = 100)
    void one_silence_and_it_is_not_shown(
            @ForAll("someLines") List<String> held, @ForAll("someLines") List<String> asked) {
        Conformity conformity = answer(held, asked);
        assertEquals(held.containsAll(asked) ? Overall.CONFORMS : Overall.NOT_SHOWN, conformity.overall());
    }

    @Property(tries = 100)
    void there_is_an_answer_to_each_clause(
            @ForAll("someLines") List<String> held, @ForAll("someLines") List<String> asked) {
        assertEquals(
                Conformance.asked(buyer(asked)),
                answer(held, asked).answers().stream().map(Answer::asked).toList());
    }

    @Property(tries = 100)
    void the_order_of_lines_makes_no_difference(@ForAll("someLines") List<String> lines, @ForAll long seed) {
        List<String> moved = new ArrayList<>(lines);
        Collections.shuffle(moved, new Random(seed));
        assertEquals(verdicts(answer(lines, LINES)), verdicts(answer(moved, LINES)));
        assertEquals(verdicts(answer(LINES, lines)), verdicts(answer(LINES, moved)));
    }

    private static List<String> verdicts(Conformity conformity) {
        return conformity.answers().stream()
                .map(answer -> answer.asked().clause() + ": " + answer.verdict() + answer.margin())
                .sorted()
                .collect(Collectors.toList());
    }

    @Property(tries = 100)
    void a_limit_is_met_as_long_as_it_is_no_tighter(
            @ForAll @IntRange(min = 1, max = 90) int held, @ForAll @IntRange(min = 1, max = 90) int asked) {
        assertEquals(
                held <= asked ? Verdict.MEETS : Verdict.FAILS,
                verdict(
                        "trim fat to at most " + held + " mm at any point",
                        "trim fat to at most " + asked + " mm at any point"));
        assertEquals(
                held >= asked ? Verdict.MEETS : Verdict.FAILS,
                verdict("thickness at least " + held + " mm", "thickness at least " + asked + " mm"));
    }

    /** A pound is 0.45359237 kg: International Yard and Pound Agreement, 1959. */
    @Property(tries = 100)
    void a_unit_makes_no_difference(
            @ForAll @IntRange(min = 1, max = 9999) int hundredths, @ForAll @IntRange(min = -1, max = 1) int more) {
        BigDecimal pounds = BigDecimal.valueOf(hundredths, 2);
        BigDecimal grams = pounds.multiply(new BigDecimal("453.59237")).add(BigDecimal.valueOf(more, 7));
        Verdict wanted = more <= 0 ? Verdict.MEETS : Verdict.FAILS;
        String inGrams = "weight at most " + grams.toPlainString() + " g";
        String inPounds = "weight at most " + pounds.toPlainString() + " lb";
        assertEquals(wanted, verdict(inGrams, inPounds));
        assertEquals(more >= 0 ? Verdict.MEETS : Verdict.FAILS, verdict(inPounds, inGrams));
    }

    @Example
    void a_freezing_point_is_one_in_either_scale() {
        assertEquals(Verdict.MEETS, verdict("keep at most 40 °F", "keep at most 4.5 °C"));
        assertEquals(Verdict.FAILS, verdict("keep at most 40 °F", "keep at most 4.4 °C"));
    }
}
