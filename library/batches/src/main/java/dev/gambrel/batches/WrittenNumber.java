package dev.gambrel.batches;

import dev.gambrel.quantity.Quantity;
import java.math.BigDecimal;

/**
 * A number as people write it: with a point or a comma before the decimals, with or without marks between thousands.
 *
 * @param found whether it is one number, none, or may be two
 * @param value the number; 0 where there is none
 */
record WrittenNumber(Found found, BigDecimal value) {
    /** What was found. */
    enum Found {
        NUMBER,
        NONE,
        UNCLEAR
    }

    private static final String SPACES = " '\u00a0\u2009\u202f\u2019";
    private static final WrittenNumber NOTHING = new WrittenNumber(Found.NONE, BigDecimal.ZERO);
    private static final WrittenNumber EITHER = new WrittenNumber(Found.UNCLEAR, BigDecimal.ZERO);

    static WrittenNumber of(String written, BatchOrder.Numbers numbers) {
        String text = written.strip();
        boolean isNegative = text.startsWith("-") || text.startsWith("\u2212");
        String figure = isNegative || text.startsWith("+") ? text.substring(1) : text;
        int comma = figure.lastIndexOf(',');
        int point = figure.lastIndexOf('.');
        boolean oneComma = comma >= 0 && figure.indexOf(',') == comma;
        boolean onePoint = point >= 0 && figure.indexOf('.') == point;
        boolean withComma = numbers == BatchOrder.Numbers.WITH_COMMA;
        int mark = -1;
        if (comma >= 0 && point >= 0) {
            mark = Math.max(comma, point);
        } else if (oneComma) {
            if (!withComma && looksLikeThousands(figure, comma)) {
                return EITHER;
            }
            mark = comma;
        } else if (onePoint && !(withComma && looksLikeThousands(figure, point))) {
            mark = point;
        }
        String whole = ungrouped(mark < 0 ? figure : figure.substring(0, mark));
        String decimals = mark < 0 ? "" : figure.substring(mark + 1);
        return number(whole, decimals, isNegative);
    }

    private static boolean looksLikeThousands(String figure, int mark) {
        return figure.length() - mark == 4 && mark >= 1 && mark <= 3 && figure.charAt(0) != '0';
    }

    private static WrittenNumber number(String whole, String decimals, boolean isNegative) {
        boolean isNumber = isDigits(whole)
                && isDigits(decimals)
                && whole.length() + decimals.length() > 0
                && whole.length() + decimals.length() <= Quantity.MAX_DIGITS;
        if (!isNumber) {
            return NOTHING;
        }
        BigDecimal value = new BigDecimal(whole + (decimals.isEmpty() ? "" : "." + decimals));
        return new WrittenNumber(Found.NUMBER, isNegative ? value.negate() : value);
    }

    /** Without the marks between thousands; what is not grouped in threes by one mark keeps them, and is no number. */
    private static String ungrouped(String whole) {
        int mark = 0;
        StringBuilder digits = new StringBuilder(whole.length());
        for (int i = 0; i < whole.length(); i++) {
            char c = whole.charAt(i);
            if (c == '.' || c == ',' || SPACES.indexOf(c) >= 0) {
                boolean isGrouped = i >= 1 && (mark == 0 ? i <= 3 : c == mark) && (whole.length() - i) % 4 == 0;
                if (!isGrouped) {
                    return whole;
                }
                mark = c;
            } else if (mark != 0 && (whole.length() - i) % 4 == 0) {
                return whole;
            } else {
                digits.append(c);
            }
        }
        return digits.toString();
    }

    private static boolean isDigits(String text) {
        return text.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
