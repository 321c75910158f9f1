package dev.gambrel.yields.batch;

/**
 * Equations as a list of steps over a stack of doubles. Where doubles might decide otherwise than exact figures the answer is
 * that it is not sure.
 *
 * @param steps kinds of step and what they work on, two numbers for each step
 * @param figures the figures in the equations
 * @param depth how high the stack grows
 * @param results how many equations there are
 */
record Program(int[] steps, double[] figures, int depth, int results) {
    static final int FIGURE = 0;
    static final int READING = 1;
    static final int WEIGHT = 2;
    static final int RESULT = 3;
    static final int ADD = 4;
    static final int MULTIPLY = 5;
    static final int NEGATE = 6;
    static final int INVERT = 7;
    static final int AT_LEAST = 8;
    static final int AT_MOST = 9;
    static final int DROP_DECIMALS = 10;
    static final int ONLY_IF = 11;
    static final int STORE = 12;

    /** So near a whole number the decimals of a figure are those of its rounding. */
    private static final double NEAR = 1e-9;

    /**
     * Works the equations out for one carcass.
     *
     * @param weight its weight
     * @param readings what was measured on it
     * @param stack room for the work
     * @param values what each equation gives, in the unit of comparison
     * @return whether doubles are enough to tell
     */
    boolean run(double weight, double[] readings, double[] stack, double[] values) {
        int top = -1;
        boolean sure = true;
        boolean isLimit = false;
        for (int at = 0; at < steps.length; at += 2) {
            int on = steps[at + 1];
            switch (steps[at]) {
                case FIGURE -> stack[++top] = figures[on];
                case READING -> stack[++top] = readings[on];
                case WEIGHT -> stack[++top] = weight;
                case RESULT -> stack[++top] = values[on];
                case ADD -> stack[top - 1] += stack[top--];
                case MULTIPLY -> stack[top - 1] *= stack[top--];
                case NEGATE -> stack[top] = -stack[top];
                case INVERT -> {
                    sure &= stack[top] != 0;
                    stack[top] = 1 / stack[top];
                }
                case AT_LEAST, AT_MOST -> {
                    boolean isBeyond = steps[at] == AT_LEAST ? stack[top] < figures[on] : stack[top] > figures[on];
                    isLimit |= isBeyond;
                    stack[top] = isBeyond ? figures[on] : stack[top];
                }
                case DROP_DECIMALS -> {
                    double told = stack[top] / figures[on];
                    sure &= isLimit || isClear(told);
                    stack[top] = (told < 0 ? Math.ceil(told) : Math.floor(told)) * figures[on];
                }
                case ONLY_IF -> at += stack[top--] == figures[on] ? 0 : 2;
                default -> {
                    values[on] = stack[top--];
                    isLimit = false;
                }
            }
        }
        return sure;
    }

    private static boolean isClear(double told) {
        return Math.abs(told - Math.rint(told)) > NEAR * Math.max(1, Math.abs(told));
    }
}
