package dev.gambrel.benchmarks;

import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A cut tree as somebody would write it in YAML: every part with every figure, names without quotation marks, braces where
 * they save lines. Parts stand in lists by kind, so that the schema need not try one kind after another.
 */
final class YamlText {
    private final StringBuilder out = new StringBuilder(Resources.text("head.yaml"));

    private YamlText() {}

    /** Writes a tree that {@link SpecText} led to. */
    static String of(CutTree tree) {
        YamlText text = new YamlText();
        text.parts(tree.parts(), 0);
        return text.out.toString();
    }

    private void parts(List<Part> parts, int depth) {
        list("bones", of(Part.Bone.class, parts), YamlText::bone, depth);
        list("trims", of(Part.Trim.class, parts), YamlText::trim, depth);
        list("losses", of(Part.Loss.class, parts), YamlText::loss, depth);
        List<Cut> cuts = of(Cut.class, parts);
        if (!cuts.isEmpty()) {
            line(depth, "cuts:");
            cuts.forEach(cut -> cut(cut, depth));
        }
        of(Part.Rest.class, parts).forEach(rest -> line(depth, "rest: " + stream(rest.home())));
    }

    private static <P extends Part> List<P> of(Class<P> kind, List<Part> parts) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private interface Words<P> {
        String of(P part);
    }

    private <P> void list(String key, List<P> parts, Words<P> words, int depth) {
        if (!parts.isEmpty()) {
            line(depth, key + ":");
            parts.forEach(part -> line(depth, "- " + words.of(part)));
        }
    }

    private void cut(Cut cut, int depth) {
        line(depth, "- name: " + cut.name());
        int inner = depth + 1;
        line(inner, "pieces: two");
        line(inner, "share: " + share(cut));
        line(inner, "bone: " + cut.description().boneState().words());
        if (!cut.description().contents().isEmpty()) {
            line(inner, "contains: " + names(cut.description().contents()));
        }
        cut.description().separations().forEach(separation -> line(inner, "separate: " + separation(separation)));
        cut.description().notes().forEach(note -> line(inner, "note: \"" + note + "\""));
        if (cut.home() instanceof Home.ToStream) {
            line(inner, "to: " + stream(cut.home()));
        }
        cut.portions().forEach(portion -> line(inner, "portion: " + portion(portion)));
        parts(cut.parts(), inner);
    }

    private static String bone(Part.Bone bone) {
        return "{name: " + bone.name() + ", share: " + share(bone) + ", to: " + stream(bone.home()) + "}";
    }

    private static String trim(Part.Trim trim) {
        return "{name: " + trim.name() + rule(trim.rule()) + ", share: " + share(trim) + ", to: " + stream(trim.home())
                + "}";
    }

    private static String rule(TrimRule rule) {
        if (rule instanceof TrimRule.FatCover fat) {
            TrimRule.FatLimit limit = fat.limits().get(0);
            return ", atMost: " + limit.atMost() + ", where: " + limit.where().words();
        } else if (rule instanceof TrimRule.GlandRemoval removal) {
            return ", gland: " + removal.gland();
        }
        return "";
    }

    private static String loss(Part.Loss loss) {
        return "{name: " + loss.name() + ", share: " + share(loss) + "}";
    }

    private static String share(Part part) {
        Share.Stated share = (Share.Stated) part.share();
        Expected.PlusMinus expected = (Expected.PlusMinus) share.expected();
        String sources = share.sources().isEmpty() ? "" : ", sources: " + names(share.sources());
        return "{mean: " + expected.exactMean() + ", deviation: "
                + expected.deviation().common() + sources + "}";
    }

    private static String separation(Separation separation) {
        String tools = "{tools: [" + String.join(", ", separation.tools()) + "]";
        if (separation.landmark() instanceof Landmark.Along along) {
            return tools + ", along: " + along.line() + "}";
        }
        Landmark.Between between = (Landmark.Between) separation.landmark();
        return tools + ", between: [" + point(between.first()) + ", " + point(between.second()) + "]}";
    }

    private static String point(SkeletonPoint point) {
        return "rib " + ((SkeletonPoint.Rib) point).number();
    }

    private static String portion(Portion portion) {
        Expected.PlusMinus weight =
                (Expected.PlusMinus) portion.aim().targetWeight().orElseThrow();
        return "{name: " + portion.name() + ", weight: " + weight.value() + ", deviation: " + weight.deviation()
                + ", remainder: " + stream(portion.remainder()) + "}";
    }

    private static String stream(Home home) {
        return ((Home.ToStream) home).stream().text();
    }

    private static String names(List<TradeName> names) {
        return names.stream().map(TradeName::text).collect(Collectors.joining(", ", "[", "]"));
    }

    private void line(int depth, String words) {
        out.append("  ".repeat(depth)).append(words).append('\n');
    }
}
