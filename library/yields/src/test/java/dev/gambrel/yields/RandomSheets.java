package dev.gambrel.yields;

import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/** Cutting sheets that close: up to four levels, rests or none, spreads stated or not. */
public final class RandomSheets {
    private static final String[] STREAM = {"diced", "mince", "bones", "waste"};

    private final Random random;
    private final boolean everySpread;

    private RandomSheets(long seed, boolean everySpread) {
        this.random = new Random(seed);
        this.everySpread = everySpread;
    }

    public static Arbitrary<CutTree> anySheets() {
        return Arbitraries.longs().map(seed -> new RandomSheets(seed, false).sheet());
    }

    /** Every spread is stated, so every figure has one. */
    public static Arbitrary<CutTree> withEverySpread() {
        return Arbitraries.longs().map(seed -> new RandomSheets(seed, true).sheet());
    }

    private CutTree sheet() {
        return Sheet.hogget(divided(1).toArray(Part[]::new));
    }

    private List<Part> divided(int level) {
        int n = 2 + random.nextInt(4);
        boolean withRest = random.nextBoolean();
        int[] shares = sharesInHundredths(n);
        String[] spreads = spreads(n);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            boolean rest = withRest && i == n - 1;
            String share = BigDecimal.valueOf(shares[i], 2) + spreads[i];
            parts.add(rest ? Sheet.rest(stream()) : part(level, i, share));
        }
        if (!withRest) {
            parts.set(0, cut(level, 0, BigDecimal.valueOf(shares[0], 2) + spreads[0]));
        }
        return parts;
    }

    private Part part(int level, int i, String share) {
        String called = level + "-" + i;
        return switch (random.nextInt(6)) {
            case 0 -> Sheet.bone("bone " + called, share, stream());
            case 1 -> Sheet.trim("trim " + called, share, stream());
            case 2 -> Sheet.loss("loss " + called, share);
            default -> cut(level, i, share);
        };
    }

    private Cut cut(int level, int i, String share) {
        Part[] parts =
                switch (level < 4 ? random.nextInt(3) : 0) {
                    case 1 -> divided(level + 1).toArray(Part[]::new);
                    case 2 -> new Part[] {Sheet.trim("fat", "4.0 ± 1.0", stream()), Sheet.loss("saw", "0.5 ± 0.1")};
                    default -> new Part[0];
                };
        String called = "cut " + level + "-" + i;
        return random.nextBoolean() ? Sheet.cut(called, share, parts) : Sheet.pair(called, share, parts);
    }

    private String stream() {
        return STREAM[random.nextInt(STREAM.length)];
    }

    private int[] sharesInHundredths(int n) {
        int[] shares = new int[n];
        int left = 10_000;
        for (int i = 0; i < n - 1; i++) {
            shares[i] = 1 + random.nextInt(left / (n - i));
            left -= shares[i];
        }
        shares[n - 1] = left;
        return shares;
    }

    /** No spread exceeds the sum of the others: they lie between 0.5 and 1, or there are two of the same. */
    private String[] spreads(int n) {
        String[] spreads = new String[n];
        for (int i = 0; i < n; i++) {
            String sd = n == 2 ? "0.7" : "0." + (50 + random.nextInt(50));
            spreads[i] = everySpread || random.nextInt(10) > 0 ? " ± " + sd : "";
        }
        return spreads;
    }
}
