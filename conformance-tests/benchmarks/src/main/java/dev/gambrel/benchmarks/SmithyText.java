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
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A cut tree as somebody would write it in Smithy's language: a structure for each cut, a member for each of its parts,
 * shares and homes as traits whose values are checked against their definitions.
 */
final class SmithyText {
    private final StringBuilder out = new StringBuilder(Resources.text("head.smithy"));
    private int cuts;

    private SmithyText() {}

    /** Writes a tree that {@link SpecText} led to. */
    static String of(CutTree tree) {
        SmithyText text = new SmithyText();
        text.structure("HouseHogget", tree.parts());
        return text.out.toString();
    }

    /** The members first; then the structures that they mean, which are numbered in the same order. */
    private void structure(String shape, List<Part> parts) {
        int first = cuts + 1;
        out.append("structure ").append(shape).append(" {\n");
        parts.forEach(this::member);
        out.append("}\n");
        int number = first;
        for (Part part : parts) {
            if (part instanceof Cut cut) {
                out.append('\n');
                cut.description().notes().forEach(note -> line("/// " + note));
                line(cutTrait(cut));
                structure(shape(cut, number++), cut.parts());
            }
        }
    }

    private void member(Part part) {
        if (part.share() instanceof Share.Stated stated) {
            line("    " + share(stated));
        }
        if (part instanceof Cut cut) {
            member(cut.name(), shape(cut, ++cuts));
        } else if (part instanceof Part.Bone bone) {
            line("    @to(" + stream(bone.home()) + ")");
            member(bone.name(), "Bone");
        } else if (part instanceof Part.Trim trim) {
            rule(trim.rule());
            line("    @to(" + stream(trim.home()) + ")");
            member(trim.name(), "Trim");
        } else if (part instanceof Part.Loss loss) {
            member(loss.name(), "Loss");
        } else if (part instanceof Part.Rest rest) {
            line("    @to(" + stream(rest.home()) + ")");
            member(rest.name(), "Rest");
        }
    }

    private void member(TradeName name, String target) {
        String camel = camel(name);
        line("    " + camel.substring(0, 1).toLowerCase(Locale.ROOT) + camel.substring(1) + ": " + target);
    }

    private void rule(TrimRule rule) {
        if (rule instanceof TrimRule.FatCover fat) {
            TrimRule.FatLimit limit = fat.limits().get(0);
            line("    @fat(atMost: \"" + limit.atMost() + "\", where: \""
                    + limit.where().words() + "\")");
        } else if (rule instanceof TrimRule.GlandRemoval removal) {
            line("    @gland(\"" + removal.gland() + "\")");
        }
    }

    private static String share(Share.Stated share) {
        Expected.PlusMinus expected = (Expected.PlusMinus) share.expected();
        String sources = share.sources().isEmpty() ? "" : ", sources: " + names(share.sources());
        return "@share(mean: " + expected.exactMean() + ", deviation: "
                + expected.deviation().common() + sources + ")";
    }

    private static String cutTrait(Cut cut) {
        StringBuilder trait = new StringBuilder("@cut(\n    pieces: \"two\"\n");
        trait.append("    bone: ")
                .append(quoted(cut.description().boneState().words()))
                .append('\n');
        if (!cut.description().contents().isEmpty()) {
            trait.append("    contains: ")
                    .append(names(cut.description().contents()))
                    .append('\n');
        }
        cut.description()
                .separations()
                .forEach(s ->
                        trait.append("    separate: ").append(separation(s)).append('\n'));
        if (cut.home() instanceof Home.ToStream) {
            trait.append("    to: ").append(stream(cut.home())).append('\n');
        }
        cut.portions()
                .forEach(p -> trait.append("    portion: ").append(portion(p)).append('\n'));
        return trait.append(")").toString();
    }

    private static String separation(Separation separation) {
        String tools = "{ tools: "
                + separation.tools().stream().map(SmithyText::quoted).collect(Collectors.joining(", ", "[", "]"));
        if (separation.landmark() instanceof Landmark.Along along) {
            return tools + ", along: " + quoted(along.line().text()) + " }";
        }
        Landmark.Between between = (Landmark.Between) separation.landmark();
        return tools + ", between: [" + point(between.first()) + ", " + point(between.second()) + "] }";
    }

    private static String point(SkeletonPoint point) {
        return quoted("rib " + ((SkeletonPoint.Rib) point).number());
    }

    private static String portion(Portion portion) {
        Expected.PlusMinus weight =
                (Expected.PlusMinus) portion.aim().targetWeight().orElseThrow();
        return "{ name: " + quoted(portion.name().text()) + ", weight: \"" + weight.value() + "\", deviation: \""
                + weight.deviation() + "\", remainder: " + stream(portion.remainder()) + " }";
    }

    private static String shape(Cut cut, int number) {
        return camel(cut.name()) + number;
    }

    private static String camel(TradeName name) {
        StringBuilder camel = new StringBuilder();
        for (String word : name.text().split(" ")) {
            camel.append(word.substring(0, 1).toUpperCase(Locale.ROOT)).append(word.substring(1));
        }
        return camel.toString();
    }

    private static String stream(Home home) {
        return quoted(((Home.ToStream) home).stream().text());
    }

    private static String names(List<TradeName> names) {
        return names.stream().map(name -> quoted(name.text())).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String quoted(String words) {
        return "\"" + words + "\"";
    }

    private void line(String words) {
        out.append(words).append('\n');
    }
}
