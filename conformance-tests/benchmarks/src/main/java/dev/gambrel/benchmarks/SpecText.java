package dev.gambrel.benchmarks;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * A specification with exactly so many parts, the same each time.
 *
 * <p>It looks like a house specification: five joints of the carcass, each divided again and again, the last cuts trimmed,
 * boned, portioned or sent to a stream. Every share has a spread. About half of what is divided closes to 100 % on its own,
 * the other half leaves a rest. Each line ends before a brace closes, so the text suits the bare grammar too.
 */
final class SpecText {
    private static final List<Joint> JOINTS = List.of(
            new Joint("leg", "popliteal", "femur"),
            new Joint("loin", "lumbar", "lumbar vertebrae"),
            new Joint("shoulder", "prescapular", "humerus"),
            new Joint("breast", "sternal", "breast bone"),
            new Joint("neck", "retropharyngeal", "neck bones"));

    private static final List<String> NAMES = List.of(
            "chump",
            "shank",
            "thick flank",
            "topside",
            "silverside",
            "heel",
            "salmon cut",
            "flat",
            "cap",
            "fillet end");

    private static final List<String> WORK = List.of(
            "trim fat to at most 3 mm at any point  4.0 % ± 1.0 %  -> mince",
            "remove silverskin  1.5 % ± 0.4 %  -> bin",
            "bone %s  7.0 % ± 0.4 %  -> stock bones",
            "remove gland %s  0.3 % ± 0.1 %  -> bin",
            "square off  6.0 % ± 1.0 %  -> diced",
            "loss drip and saw  0.5 % ± 0.1 %",
            "remove membrane  1.0 % ± 0.3 %  -> bin",
            "remove blood and sinew  1.0 % ± 0.3 %  -> bin");

    private static final int MOST_CUTS = 5;
    private static final int PARTS_OF_A_FINISHED_CUT = 7;
    private static final int LEAST_WORK_WITH_BONE = 3;
    private static final BigDecimal TYPICAL_GRAMS = BigDecimal.valueOf(22_000);
    private static final MathContext AS_WRITTEN = new MathContext(2);

    private record Joint(String name, String gland, String bone) {}

    private final StringBuilder out = new StringBuilder(Resources.text("head.cuts"));

    private SpecText() {}

    /**
     * Writes a specification.
     *
     * @param parts how many cuts, bones, trims, losses and rests; at least 100
     * @return the text
     */
    static String of(int parts) {
        SpecText text = new SpecText();
        text.carcass(parts);
        return text.out.toString();
    }

    private void carcass(int parts) {
        line(0, "remove spinal cord  0.2 % ± 0.05 %  -> bin");
        line(0, "remove channel fat  1.8 % ± 0.4 %  -> render");
        line(0, "loss drip and saw  0.5 % ± 0.2 %");
        int below = parts - 3 - JOINTS.size();
        for (int i = 0; i < JOINTS.size(); i++) {
            out.append('\n');
            cut(JOINTS.get(i).name(), JOINTS.get(i), 195, fairShare(below, JOINTS.size(), i), 0, TYPICAL_GRAMS);
        }
    }

    private static int fairShare(int all, int among, int index) {
        return all / among + (index < all % among ? 1 : 0);
    }

    private void cut(String name, Joint joint, int tenths, int parts, int depth, BigDecimal gramsAbove) {
        BigDecimal share = BigDecimal.valueOf(tenths, 1);
        BigDecimal grams = gramsAbove.multiply(share).movePointLeft(2);
        boolean finished = parts <= WORK.size();
        String start = "cut " + name + ", two per carcass, " + share + " % ± 0.9 %";
        if (finished) {
            boolean whole = parts % 2 == 0;
            line(depth, start + ", boneless, source house tests" + (whole ? " -> diced {" : " {"));
            finish(joint, parts, depth + 1, whole, grams);
        } else {
            line(depth, start + ", bone in, source house tests {");
            divide(joint, parts, depth + 1, grams);
        }
        line(depth, "}");
    }

    private void divide(Joint joint, int parts, int depth, BigDecimal grams) {
        boolean rest = parts % 2 == 0;
        int cuts = Math.max(2, Math.min(MOST_CUTS, (parts - 4) / PARTS_OF_A_FINISHED_CUT));
        line(depth, "separate by knife and saw between rib 5 and rib 6");
        line(depth, "note \"Caution: knife and saw. Guard the free hand.\"");
        line(depth, "contains " + joint.bone());
        line(depth, "bone " + joint.bone() + "  7.0 % ± 0.4 %  -> stock bones");
        line(depth, "trim fat to at most 5 mm on average  4.0 % ± 1.0 %  -> render");
        line(depth, "loss saw  0.5 % ± 0.1 %");
        int tenths = 885 - (rest ? 80 : 15);
        for (int i = 0; i < cuts; i++) {
            String name = NAMES.get((depth * MOST_CUTS + i) % NAMES.size());
            int below = fairShare(parts - 4 - cuts, cuts, i);
            cut(name, joint, fairShare(tenths, cuts, i), below, depth, grams);
        }
        line(depth, rest ? "rest  -> mince" : "remove silverskin  1.5 % ± 0.4 %  -> bin");
    }

    private void finish(Joint joint, int parts, int depth, boolean whole, BigDecimal grams) {
        line(depth, "separate by knife along the seam of the " + joint.name());
        if (parts >= LEAST_WORK_WITH_BONE) {
            line(depth, "contains " + joint.bone());
        }
        for (String work : WORK.subList(0, parts)) {
            String what = work.startsWith("bone") ? joint.bone() : joint.gland();
            line(depth, work.replace("%s", what));
        }
        if (!whole) {
            String target = written(grams.movePointLeft(1));
            String spread = written(grams.movePointLeft(2));
            line(depth, "portion steak " + target + " g ± " + spread + " g, remainder -> diced");
        }
    }

    private static String written(BigDecimal grams) {
        return grams.round(AS_WRITTEN).toPlainString();
    }

    private void line(int depth, String words) {
        out.append("  ".repeat(depth)).append(words).append('\n');
    }
}
