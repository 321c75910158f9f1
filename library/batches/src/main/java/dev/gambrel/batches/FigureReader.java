package dev.gambrel.batches;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;

/**
 * Reads the figures of one column: "21.4", "21,4", "1 021.4 kg", "47 lb 6 oz". What is plain digits with at most one point is read
 * without making an object, and exactly: the nearest double, as of the decimal itself. Belongs to one thread.
 */
final class FigureReader {
    /** What a cell holds. */
    enum Found {
        FIGURE,
        EMPTY,
        NO_FIGURE,
        UNCLEAR,
        NO_UNIT,
        OTHER_UNIT
    }

    private static final int MOST_DIGITS = 15;
    private static final int EXACT_POWERS = 22;
    private static final long EXACT = 1L << 53;
    private static final BigDecimal OUNCES_IN_A_POUND = BigDecimal.valueOf(16);
    private static final double[] POWERS = new double[EXACT_POWERS + 1];

    static {
        POWERS[0] = 1;
        for (int i = 1; i < POWERS.length; i++) {
            POWERS[i] = POWERS[i - 1] * 10;
        }
    }

    private final Dimension dimension;
    private final List<Unit> headed;
    private final BatchOrder.Numbers numbers;
    private final long factor;
    private final int factorDecimals;
    private double value;

    /**
     * A reader of one column.
     *
     * @param dimension what is measured
     * @param headed the unit of the heading; empty where it says none
     * @param numbers how figures are read
     */
    FigureReader(Dimension dimension, List<Unit> headed, BatchOrder.Numbers numbers) {
        this.dimension = dimension;
        this.headed = headed;
        this.numbers = numbers;
        boolean isPlain = headed.size() == 1 && dimension != Dimension.TEMPERATURE;
        BigDecimal size = isPlain ? headed.get(0).factor() : BigDecimal.ZERO;
        this.factor = size.unscaledValue().longValueExact();
        this.factorDecimals = size.scale();
    }

    /** The figure that was read last, in the unit in which its dimension is compared. */
    double value() {
        return value;
    }

    Found read(char[] text, int begin, int end) {
        int from = begin;
        int to = end;
        while (from < to && text[from] == ' ') {
            from++;
        }
        while (to > from && text[to - 1] == ' ') {
            to--;
        }
        if (from == to) {
            return Found.EMPTY;
        }
        return readPlain(text, from, to) ? Found.FIGURE : readWritten(new String(text, from, to - from));
    }

    /** Digits with at most one point, few enough that whole numbers and powers of ten are exact (W. D. Clinger, 1990). */
    private boolean readPlain(char[] text, int from, int to) {
        if (factor == 0 || to - from > MOST_DIGITS + 1) {
            return false;
        }
        long digits = 0;
        int point = -1;
        for (int i = from; i < to; i++) {
            char c = text[i];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
            } else if (c == '.' && point < 0 && numbers == BatchOrder.Numbers.WITH_POINT) {
                point = i;
            } else {
                return false;
            }
        }
        int power = factorDecimals + (point < 0 ? 0 : to - point - 1);
        boolean isExact =
                digits <= EXACT / factor && power >= 0 && power <= EXACT_POWERS && to - from > (point < 0 ? 0 : 1);
        value = isExact ? digits * factor / POWERS[power] : 0;
        return isExact;
    }

    private Found readWritten(String text) {
        int unitAt = unit(text, 0);
        WrittenNumber number = WrittenNumber.of(text.substring(0, unitAt), numbers);
        if (number.found() != WrittenNumber.Found.NUMBER) {
            return number.found() == WrittenNumber.Found.UNCLEAR ? Found.UNCLEAR : Found.NO_FIGURE;
        }
        String rest = text.substring(unitAt).strip();
        if (rest.isEmpty()) {
            return headed.isEmpty() ? Found.NO_UNIT : take(number.value(), headed.get(0));
        }
        int more = number(rest);
        Unit unit = Unit.of(rest.substring(0, more).strip()).orElse(Unit.NUMBER);
        if (unit == Unit.NUMBER || unit.dimension() != dimension) {
            return Found.OTHER_UNIT;
        }
        return more == rest.length() ? take(number.value(), unit) : ounces(number.value(), unit, rest.substring(more));
    }

    /** Pounds with ounces after them. */
    private Found ounces(BigDecimal pounds, Unit unit, String rest) {
        int unitAt = unit(rest, 0);
        WrittenNumber ounces = WrittenNumber.of(rest.substring(0, unitAt), numbers);
        boolean fits = unit == Unit.POUND
                && ounces.found() == WrittenNumber.Found.NUMBER
                && Unit.of(rest.substring(unitAt).strip())
                        .filter(u -> u == Unit.OUNCE)
                        .isPresent()
                && ounces.value().signum() >= 0
                && ounces.value().compareTo(OUNCES_IN_A_POUND) < 0;
        return fits ? take(pounds.add(ounces.value().divide(OUNCES_IN_A_POUND)), unit) : Found.NO_FIGURE;
    }

    private Found take(BigDecimal amount, Unit unit) {
        if (!Quantity.isAcceptable(amount)) {
            return Found.NO_FIGURE;
        }
        value = new Quantity(amount, unit).value();
        return Found.FIGURE;
    }

    /** Where the letters of a unit begin. */
    private static int unit(String text, int from) {
        int at = from;
        while (at < text.length() && !isOfAUnit(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static boolean isOfAUnit(char c) {
        return Character.isLetter(c) || c == '%' || c == '°' || c == 'º';
    }

    /** Where the digits of another figure begin. */
    private static int number(String text) {
        int at = 0;
        while (at < text.length() && !(text.charAt(at) >= '0' && text.charAt(at) <= '9' && isApart(text, at))) {
            at++;
        }
        return at;
    }

    /** mm2 is a unit; lb 6 oz is not. */
    private static boolean isApart(String text, int at) {
        return at == 0 || text.charAt(at - 1) == ' ';
    }
}
