package dev.gambrel.cli.origin.report;

import dev.gambrel.cli.origin.report.NamedPart.Kind;
import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.origin.Origin;
import dev.gambrel.compiler.origin.Origins;
import dev.gambrel.compiler.origin.SpeciesOrigins;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gathers where all that is stated of a part comes from: the part, its own lines, and what is known of the piece. */
public final class OriginReport {
    private final CutTree tree;
    private final Origins origins;
    private final PartFinder finder;
    private final List<OriginSection> sections = new ArrayList<>();

    private OriginReport(Compilation compilation, PartFinder finder) {
        this.tree = compilation.tree();
        this.origins = compilation.origins();
        this.finder = finder;
    }

    /**
     * What is stated of some parts.
     *
     * @param compilation the specification
     * @param finder its parts
     * @param parts those that are asked about
     * @return a section for each part, each of its own lines and each piece of the animal of that name
     */
    public static List<OriginSection> of(Compilation compilation, PartFinder finder, List<NamedPart> parts) {
        OriginReport report = new OriginReport(compilation, finder);
        parts.forEach(report::add);
        return List.copyOf(report.sections);
    }

    private void add(NamedPart part) {
        if (part.kind() == Kind.CARCASS) {
            carcass();
        } else {
            part(part);
        }
        finder.ownLinesOf(part).forEach(this::part);
        if (part.kind() == Kind.CARCASS) {
            animal();
        } else if (part.kind() == Kind.CUT) {
            origins.species().pieces(TradeName.of(part.path().last())).forEach(this::piece);
        }
    }

    private void carcass() {
        Values values = new Values(TreePath.ROOT);
        values.add("specification", Aspect.TITLE);
        values.add("weighed", Aspect.NAME);
        values.add("dressing", Aspect.DRESSING);
        values.add("band", Aspect.BAND);
        values.add("on the way", Aspect.STEP);
        values.add("grade", Aspect.GRADE);
        values.add("measure", Aspect.MEASURE);
        values.add("estimate", Aspect.ESTIMATE);
        values.add("allowed", Aspect.ALLOWANCE);
        values.add("note", Aspect.NOTE);
        section(TreePath.ROOT.toString(), values.list);
        Values streams = new Values(TreePath.ROOT);
        streams.add("stream", Aspect.STREAM);
        section("streams", streams.list);
    }

    private void part(NamedPart part) {
        Values values = new Values(part.path());
        values.add("name", Aspect.NAME);
        if (part.kind() == Kind.PORTION) {
            portion(values);
            section(part.path().toString(), values.list);
            return;
        }
        if (part.kind() == Kind.WAY) {
            values.add("worked so", Aspect.CHOICE);
        } else {
            values.add("share", Aspect.SHARE);
            values.add("estimate", Aspect.ESTIMATE);
            values.add("other share", Aspect.DERIVED_SHARE);
        }
        values.add("pieces", Aspect.COUNT);
        values.add("bone", Aspect.BONE_STATE);
        values.add("fat", Aspect.LIMIT);
        values.add("goes to", Aspect.STREAM);
        values.add("lean", Aspect.LEAN);
        bench(values);
        values.add("parted", Aspect.SEPARATION);
        values.add("number", Aspect.REFERENCE);
        values.add("contains", Aspect.CONTENTS);
        values.add("also called", Aspect.OTHER_NAME);
        values.add("allowed", Aspect.ALLOWANCE);
        values.add("note", Aspect.NOTE);
        section(part.path().toString(), values.list);
    }

    private static void bench(Values values) {
        values.add("after", Aspect.TURN);
        values.add("pair", Aspect.MATCHING);
        values.add("ribs", Aspect.RIB_COUNT);
        values.add("tissue", Aspect.TREATMENT);
    }

    private static void portion(Values values) {
        values.add("target", Aspect.SHARE);
        values.add("thickness", Aspect.THICKNESS);
        values.add("number", Aspect.NUMBER);
        values.add("accepted", Aspect.LIMIT);
        values.add("accepted", Aspect.THICKNESS_LIMIT);
        values.add("rules", Aspect.PRECEDENCE);
        values.add("smallest", Aspect.SMALLEST);
        values.add("fewest", Aspect.FEWEST);
        values.add("kerf", Aspect.KERF);
        values.add("length", Aspect.LENGTH);
        values.add("binding", Aspect.BINDING);
        values.add("packed", Aspect.PACK);
        values.add("tare", Aspect.TARE);
        values.add("end pieces", Aspect.END_PIECES);
        values.add("remainder to", Aspect.STREAM);
    }

    private void animal() {
        List<StatedValue> values = new ArrayList<>();
        origins.species().ribs().ifPresent(origin -> values.add(new StatedValue("ribs", origin, true)));
        Arrays.stream(SpineRegion.values())
                .flatMap(region -> origins.species().vertebrae(region).stream())
                .forEach(origin -> values.add(new StatedValue("vertebrae", origin, true)));
        section("known of the " + tree.species().name(), values);
    }

    private void piece(SpeciesOrigins.PieceOrigin piece) {
        List<StatedValue> values = new ArrayList<>();
        values.add(new StatedValue("name", piece.origin(), false));
        piece.published().forEach(origin -> values.add(new StatedValue("published", origin, true)));
        piece.references().forEach(origin -> values.add(new StatedValue("number", origin, true)));
        section("known of the " + piece.name() + " of a " + tree.species().name(), values);
    }

    private void section(String heading, List<StatedValue> values) {
        if (!values.isEmpty()) {
            sections.add(new OriginSection(heading, values));
        }
    }

    /** The values of one part so far. */
    private final class Values {
        private final TreePath path;
        private final List<StatedValue> list = new ArrayList<>();

        private Values(TreePath path) {
            this.path = path;
        }

        private void add(String what, Aspect aspect) {
            boolean isFigure =
                    switch (aspect) {
                        case SHARE -> !what.equals("target") && !isEstimated();
                        case DERIVED_SHARE -> true;
                        case STEP, REFERENCE, ESTIMATE -> true;
                        default -> false;
                    };
            for (Origin origin : origins.all(path, aspect)) {
                list.add(new StatedValue(what, origin, isFigure));
            }
        }

        /** What an estimated share rests on is told of the equation. */
        private boolean isEstimated() {
            return !origins.all(path, Aspect.ESTIMATE).isEmpty();
        }
    }
}
