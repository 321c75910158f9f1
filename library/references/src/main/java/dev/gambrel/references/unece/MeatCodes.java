package dev.gambrel.references.unece;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.references.code.ReferenceCode;
import dev.gambrel.references.item.Animal;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads UNECE meat codes. What is no code is refused, and each digit that may not stand where it stands is told of. */
public final class MeatCodes {
    private static final List<Integer> UNUSED = List.of(7, 8, 13);
    private static final int SHOWN = 5;

    private final SourceText text;
    private final Span span;
    private final String written;
    private final List<Diagnostic> findings = new ArrayList<>();

    private MeatCodes(SourceText text, Span span) {
        this.text = text;
        this.span = span;
        this.written = text.slice(span);
    }

    /**
     * Reads a text that is nothing but a code.
     *
     * @param text the text
     * @return the code, or what is wrong with it
     */
    public static Result<MeatCode> decode(SourceText text) {
        return decode(text, new Span(0, text.text().length()));
    }

    /**
     * Reads a code that stands in a text.
     *
     * @param text the text
     * @param span where the code stands, without blanks around it
     * @return the code, with a warning where the cut is not held; or each position that is wrong
     */
    public static Result<MeatCode> decode(SourceText text, Span span) {
        return new MeatCodes(text, span).code();
    }

    private Result<MeatCode> code() {
        if (written.length() != MeatCode.LENGTH) {
            return Result.failed(List.of(Diagnostic.of(ReferenceCode.MEAT_CODE_LENGTH, new Place.InText(text, span))
                    .with("count", written.length())
                    .help("Write 20 digits and no blanks: 2 of the species, 4 of the cut, 14 of the fields.")));
        }
        letters();
        if (!findings.isEmpty()) {
            return Result.failed(findings);
        }
        unused();
        Optional<Animal> animal = Animal.ofDigits(written.substring(0, 2));
        if (animal.isEmpty()) {
            findings.add(at(ReferenceCode.SPECIES_NOT_ASSIGNED, 1, 2)
                    .with("digits", written.substring(0, 2))
                    .note("Held are " + Animal.list() + ".")
                    .help("If it is a code of deer or of edible co-products: their species digits are not held here."));
            return Result.failed(findings);
        }
        return of(animal.get());
    }

    private void letters() {
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if ((c < '0' || c > '9') && findings.size() < SHOWN) {
                findings.add(
                        at(ReferenceCode.NOT_A_DIGIT, i + 1, i + 1)
                                .with("position", i + 1)
                                .with("written", Character.toString(written.codePointAt(i)))
                                .help(
                                        Character.isDigit(c)
                                                ? "Write the digit with the plain digits 0 to 9; this one is of another script."
                                                : "Look whether it is a meat code: the text of AI (7002) may be something else."));
            }
        }
    }

    private void unused() {
        for (int position : UNUSED) {
            if (written.charAt(position - 1) != '0') {
                findings.add(at(ReferenceCode.UNUSED_DIGIT, position, position)
                        .with("position", position)
                        .with("digit", written.substring(position - 1, position))
                        .help("Positions 7, 8 and 13 are 0 in every code; look whether a digit is missing before it."));
            }
        }
    }

    private Result<MeatCode> of(Animal animal) {
        Map<Field, Integer> digits = new EnumMap<>(Field.class);
        for (Field field : Field.values()) {
            int digit = written.charAt(field.position() - 1) - '0';
            digits.put(field, digit);
            if (!MeatCode.isGivenOut(animal, field, digit)) {
                findings.add(at(ReferenceCode.VALUE_NOT_ASSIGNED, field.position(), field.position())
                        .with("position", field.position())
                        .with("field", field.words())
                        .with("digit", digit)
                        .with("animal", animal.word())
                        .help("The list has " + field.list() + "."));
            }
        }
        if (!findings.isEmpty()) {
            return Result.failed(findings);
        }
        MeatCode code = new MeatCode(animal, written.substring(2, 6), digits);
        if (code.meaning() instanceof Meaning.Unknown) {
            findings.add(at(ReferenceCode.CUT_NOT_HELD, 3, 6)
                    .with("cut", code.cut())
                    .with("animal", animal.word())
                    .help("Look the number up in the standard; the lists held here are not complete."));
        }
        return Result.of(code, findings);
    }

    /** Positions are counted from 1. */
    private Diagnostic at(ReferenceCode code, int from, int to) {
        return Diagnostic.of(code, new Place.InText(text, new Span(span.start() + from - 1, span.start() + to)));
    }
}
