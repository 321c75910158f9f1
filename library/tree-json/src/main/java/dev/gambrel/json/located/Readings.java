package dev.gambrel.json.located;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Readings of single values, lists and objects. */
public final class Readings {
    private static final TradeName NO_NAME = TradeName.of("unreadable");
    private static final BigDecimal TOO_LONG = BigDecimal.valueOf(1, Quantity.MAX_EXPONENT + 1);
    private static final BigInteger LARGEST_COUNT = BigInteger.valueOf(Integer.MAX_VALUE);

    private Readings() {}

    /**
     * Text.
     *
     * @param value the value
     * @param findings where it is told if it is none
     * @return the text
     */
    public static String text(Located value, Findings findings) {
        if (value instanceof Located.Text text) {
            return text.text();
        }
        findings.wrongType(value, "text in quotation marks");
        return "";
    }

    /**
     * A name.
     *
     * @param value the value
     * @param findings where it is told if it is none
     * @return the name
     */
    public static TradeName name(Located value, Findings findings) {
        if (!(value instanceof Located.Text text)) {
            findings.wrongType(value, "a name in quotation marks");
            return NO_NAME;
        }
        if (TradeName.isAcceptable(text.text())) {
            return TradeName.of(text.text());
        }
        findings.add(findings.at(JsonCode.UNUSABLE_NAME, value.pointer(), value.span())
                .with("allowed", TradeName.MAX_LENGTH)
                .with("found", Shown.of(text.text())));
        return NO_NAME;
    }

    /**
     * A decimal, exactly as written; one written with an exponent is written out first.
     *
     * @param value the value
     * @param findings where it is told if it is none, or too long
     * @return the decimal
     */
    public static BigDecimal figure(Located value, Findings findings) {
        if (!(value instanceof Located.Figure figure)) {
            findings.wrongType(value, "a number");
            return BigDecimal.ZERO;
        }
        BigDecimal exact = exact(figure.digits());
        if (Quantity.isAcceptable(exact)) {
            return exact;
        }
        findings.add(findings.at(JsonCode.UNUSABLE_NUMBER, value.pointer(), value.span())
                .with("found", Shown.of(figure.digits()))
                .with("digits", Quantity.MAX_DIGITS)
                .with("places", Quantity.MAX_EXPONENT));
        return BigDecimal.ZERO;
    }

    private static BigDecimal exact(String digits) {
        try {
            BigDecimal decimal = new BigDecimal(digits);
            if (decimal.scale() >= 0) {
                return decimal;
            }
            return decimal.precision() - (long) decimal.scale() <= Quantity.MAX_DIGITS ? decimal.setScale(0) : TOO_LONG;
        } catch (NumberFormatException exponentPastAllNumbers) {
            return TOO_LONG;
        }
    }

    /**
     * A whole number.
     *
     * @param value the value
     * @param findings where it is told if it is none
     * @return 0 or more
     */
    public static int count(Located value, Findings findings) {
        String wanted = "a whole number from 0 up";
        if (!(value instanceof Located.Figure)) {
            findings.wrongType(value, wanted);
            return 0;
        }
        BigDecimal figure = figure(value, findings);
        BigInteger whole = figure.toBigInteger();
        boolean fits = figure.compareTo(new BigDecimal(whole)) == 0
                && whole.signum() >= 0
                && whole.compareTo(LARGEST_COUNT) <= 0;
        if (!fits) {
            findings.add(findings.at(JsonCode.WRONG_TYPE, value.pointer(), value.span())
                    .with("found", Shown.of(((Located.Figure) value).digits()))
                    .with("allowed", wanted));
        }
        return fits ? whole.intValue() : 0;
    }

    /**
     * One of a few words.
     *
     * @param values what they stand for
     * @param words the word of each
     * @param <T> what they stand for
     * @return the reading
     */
    public static <T> Reading<T> word(List<T> values, Function<T, String> words) {
        return (value, findings) -> {
            if (!(value instanceof Located.Text text)) {
                findings.wrongType(
                        value,
                        "one of the words "
                                + Shown.list(values.stream().map(words).toList()));
                return values.get(0);
            }
            for (T candidate : values) {
                if (words.apply(candidate).equals(text.text())) {
                    return candidate;
                }
            }
            unknownWord(text, findings, values.stream().map(words).toList());
            return values.get(0);
        };
    }

    /**
     * A list.
     *
     * @param item what to make of each item
     * @param <T> what is made
     * @return the reading
     */
    public static <T> Reading<List<T>> list(Reading<T> item) {
        return (value, findings) -> {
            List<T> read = new ArrayList<>();
            if (value instanceof Located.Items list) {
                list.items().forEach(each -> read.add(item.read(each, findings)));
            } else {
                findings.wrongType(value, "a list in square brackets");
            }
            return read;
        };
    }

    /**
     * An object. Fields that are not asked for are told.
     *
     * @param body asks for the fields
     * @param <T> what is made
     * @return the reading
     */
    public static <T> Reading<T> object(Function<ObjectReader, T> body) {
        return (value, findings) -> {
            if (!(value instanceof Located.Fields fields)) {
                findings.wrongType(value, "an object in braces");
                return body.apply(ObjectReader.ofNothing(value, findings));
            }
            ObjectReader in = new ObjectReader(fields, findings);
            T read = body.apply(in);
            in.end();
            return read;
        };
    }

    private static void unknownWord(Located.Text text, Findings findings, List<String> words) {
        Diagnostic finding = findings.at(JsonCode.UNKNOWN_WORD, text.pointer(), text.span())
                .with("found", Shown.of(text.text()))
                .with("allowed", Shown.list(words));
        findings.add(Shown.nearest(text.text(), words)
                .map(meant -> finding.help(Shown.question(meant)))
                .orElse(finding));
    }

    /**
     * Reads an object whose field "kind" says which of several things it is.
     *
     * @param <T> what they have in common
     */
    public static final class Kinds<T> implements Reading<T> {
        private final Map<String, Function<ObjectReader, ? extends T>> bodies = new LinkedHashMap<>();

        /** No kind yet. */
        public Kinds() {}

        /**
         * Adds a kind; the first one gives the stand-in.
         *
         * @param kind its word
         * @param body asks for the fields
         * @return this
         */
        public Kinds<T> or(String kind, Function<ObjectReader, ? extends T> body) {
            bodies.put(kind, body);
            return this;
        }

        @Override
        public T read(Located value, Findings findings) {
            return object(this::byKind).read(value, findings);
        }

        private T byKind(ObjectReader in) {
            List<String> words = List.copyOf(bodies.keySet());
            String kind = in.need("kind", Shown.list(words), word(words, Function.identity()));
            return bodies.get(kind).apply(in.says("kind", kind) ? in : in.givenUp());
        }
    }
}
