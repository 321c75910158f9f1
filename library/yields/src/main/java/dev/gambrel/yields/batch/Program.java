package dev.gambrel.yields.batch;

import java.util.Arrays;

/**
 * Equations as a list of steps over a stack of columns: each step is done to all carcasses of a block before the next. Where
 * doubles might decide otherwise than exact figures a carcass is not sure. Belongs to one worker, since it has room of its
 * own.
 */
final class Program {
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

    private final Steps program;
    private final double[][] stack;
    private final boolean[] isLimit = new boolean[Block.SIZE];
    private final boolean[] isMeant = new boolean[Block.SIZE];

    /**
     * What is to be done.
     *
     * @param steps kinds of step and what they work on, two numbers for each step
     * @param figures the figures in the equations
     * @param depth how high the stack grows
     * @param results how many equations there are
     */
    record Steps(int[] steps, double[] figures, int depth, int results) {}

    Program(Steps program) {
        this.program = program;
        this.stack = new double[program.depth()][Block.SIZE];
    }

    /** Works the equations out for each carcass of a block, in the unit of comparison. */
    void run(Block block) {
        int n = block.size();
        int top = -1;
        Arrays.fill(isLimit, false);
        Arrays.fill(isMeant, true);
        int[] steps = program.steps();
        for (int step = 0; step < steps.length; step += 2) {
            int on = steps[step + 1];
            switch (steps[step]) {
                case FIGURE -> Arrays.fill(stack[++top], 0, n, program.figures()[on]);
                case READING -> System.arraycopy(block.readings(on), 0, stack[++top], 0, n);
                case WEIGHT -> System.arraycopy(block.kilograms(), 0, stack[++top], 0, n);
                case RESULT -> System.arraycopy(block.estimated(on), 0, stack[++top], 0, n);
                case ADD -> add(stack[top - 1], stack[top--], n);
                case MULTIPLY -> multiply(stack[top - 1], stack[top--], n);
                case NEGATE -> negate(stack[top], n);
                case INVERT -> invert(stack[top], n, block.sure());
                case ONLY_IF -> onlyIf(stack[top--], n, program.figures()[on]);
                case AT_LEAST -> atLeast(stack[top], n, program.figures()[on]);
                case AT_MOST -> atMost(stack[top], n, program.figures()[on]);
                case DROP_DECIMALS -> dropDecimals(stack[top], n, program.figures()[on], block.sure());
                default -> {
                    System.arraycopy(stack[top--], 0, block.estimates()[on], 0, n);
                    Arrays.fill(isLimit, false);
                }
            }
        }
    }

    private static void add(double[] to, double[] more, int n) {
        for (int i = 0; i < n; i++) {
            to[i] += more[i];
        }
    }

    private static void multiply(double[] to, double[] by, int n) {
        for (int i = 0; i < n; i++) {
            to[i] *= by[i];
        }
    }

    private static void negate(double[] of, int n) {
        for (int i = 0; i < n; i++) {
            of[i] = -of[i];
        }
    }

    private static void invert(double[] of, int n, boolean[] sure) {
        for (int i = 0; i < n; i++) {
            sure[i] &= of[i] != 0;
            of[i] = 1 / of[i];
        }
    }

    /** The step that follows is done to some carcasses only. */
    private void onlyIf(double[] score, int n, double asked) {
        for (int i = 0; i < n; i++) {
            isMeant[i] = score[i] == asked;
        }
    }

    private void atLeast(double[] value, int n, double limit) {
        for (int i = 0; i < n; i++) {
            boolean isBeyond = isMeant[i] && value[i] < limit;
            isLimit[i] |= isBeyond;
            value[i] = isBeyond ? limit : value[i];
            isMeant[i] = true;
        }
    }

    private void atMost(double[] value, int n, double limit) {
        for (int i = 0; i < n; i++) {
            boolean isBeyond = isMeant[i] && value[i] > limit;
            isLimit[i] |= isBeyond;
            value[i] = isBeyond ? limit : value[i];
            isMeant[i] = true;
        }
    }

    private void dropDecimals(double[] value, int n, double unit, boolean[] sure) {
        for (int i = 0; i < n; i++) {
            double told = value[i] / unit;
            sure[i] &= !isMeant[i] || isLimit[i] || isClear(told);
            double dropped = (told < 0 ? Math.ceil(told) : Math.floor(told)) * unit;
            value[i] = isMeant[i] ? dropped : value[i];
            isMeant[i] = true;
        }
    }

    private static boolean isClear(double told) {
        return Math.abs(told - Math.rint(told)) > NEAR * Math.max(1, Math.abs(told));
    }
}
