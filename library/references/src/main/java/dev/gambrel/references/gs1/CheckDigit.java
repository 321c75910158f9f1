package dev.gambrel.references.gs1;

/**
 * The check digit of GS1 numbers: from the right, digits weigh 3 and 1 by turns, and the check digit fills their sum up to a multiple of
 * ten.
 *
 * <p>GS1 General Specifications, seen as shown by several GS1 organisations with worked numbers.
 */
public final class CheckDigit {
    private static final int HEAVY = 3;
    private static final int BASE = 10;

    private CheckDigit() {}

    /**
     * Works it out.
     *
     * @param digits the digits before it, 0 to 9, any number of them
     * @return 0 to 9
     * @throws IllegalArgumentException if something else stands among them
     */
    public static int of(String digits) {
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            int digit = digits.charAt(digits.length() - 1 - i) - '0';
            if (digit < 0 || digit >= BASE) {
                throw new IllegalArgumentException("not a digit among them");
            }
            sum = (sum + digit * (i % 2 == 0 ? HEAVY : 1)) % BASE;
        }
        return (BASE - sum) % BASE;
    }

    /**
     * Whether the last digit is the right one.
     *
     * @param number a number with its check digit, at least one digit
     * @return true if it is what {@link #of} says of those before
     */
    public static boolean isRight(String number) {
        int last = number.length() - 1;
        return of(number.substring(0, last)) == number.charAt(last) - '0';
    }
}
