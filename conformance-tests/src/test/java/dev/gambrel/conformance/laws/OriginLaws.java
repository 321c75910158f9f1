package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.origin.Origin;
import dev.gambrel.compiler.origin.Origins;
import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.portion.Limit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Example;

/** Whatever stands in the tree of a specification, somebody wrote, and it can be shown where. */
class OriginLaws {
    private static final Pattern AMOUNT = Pattern.compile("-?([0-9.]+)(?:\\s*([0-9]+)?/([0-9]+))?");

    private int shares;
    private int parts;

    @Example
    void every_part_and_every_figure_of_every_sound_file_can_be_traced_to_the_words_that_state_it() {
        List<Compilation> sound = Specifications.all().stream()
                .flatMap(file -> Specifications.compile(file).value().stream())
                .toList();
        for (Compilation compiled : sound) {
            Origins origins = compiled.origins();
            check(compiled.tree().parts(), TreePath.ROOT, origins, compiled.tree());
            checkTop(compiled.tree(), origins);
            compiled.tree().species().pieces().forEach(piece -> check(piece, origins, compiled.tree()));
        }
        assertTrue(parts > 200 && shares > 150, parts + " parts, " + shares + " shares");
    }

    private void check(List<Part> under, TreePath above, Origins origins, CutTree tree) {
        for (Part part : under) {
            TreePath path = above.then(part.name());
            checkName(path, origins);
            if (part instanceof Way way) {
                check(way.work().parts(), path, origins, tree);
                continue;
            }
            checkShare(part.share(), path, origins, tree);
            assertEquals(
                    part.home() instanceof Home.ToStream ? 1 : 0,
                    origins.all(path, Aspect.STREAM).size());
            if (part instanceof Cut cut) {
                assertEquals(
                        cut.description().references().size(),
                        origins.all(path, Aspect.REFERENCE).size());
                assertEquals(
                        cut.description().separations().size(),
                        origins.all(path, Aspect.SEPARATION).size());
                assertEquals(
                        cut.description().notes().size(),
                        origins.all(path, Aspect.NOTE).size());
                cut.portions().forEach(portion -> check(portion, path, origins));
                check(cut.parts(), path, origins, tree);
            }
        }
    }

    private void checkName(TreePath path, Origins origins) {
        Origin name = origins.of(path, Aspect.NAME).orElseThrow();
        String words = name.words().replace("\"", "");
        assertEquals(TradeName.of(path.last()), TradeName.of(words));
        assertTrue(name.line().contains(name.words()), path::toString);
        parts++;
    }

    private void checkShare(Share share, TreePath path, Origins origins, CutTree tree) {
        Optional<Origin> origin = origins.of(path, Aspect.SHARE);
        if (share instanceof Share.Estimated estimated) {
            String words = origin.orElseThrow().words();
            assertTrue(words.endsWith(estimated.equation().text()), words);
            return;
        }
        if (!(share instanceof Share.Stated stated)) {
            assertEquals(Optional.empty(), origin, path::toString);
            return;
        }
        checkFirst(stated.expected(), origin.orElseThrow());
        assertEquals(sources(stated.sources(), tree), origin.get().sources());
        List<Origin> others = origins.all(path, Aspect.DERIVED_SHARE);
        assertEquals(stated.others().size(), others.size());
        for (int i = 0; i < others.size(); i++) {
            checkFirst(stated.others().get(i).expected(), others.get(i));
        }
        Place.Written written = (Place.Written) origins.written(new Place.InTree(path, Aspect.SHARE));
        assertEquals(origin.get().place(), written.text(), "a finding underlines the same words");
        shares++;
    }

    private void check(Portion portion, TreePath cut, Origins origins) {
        TreePath path = cut.then(portion.name());
        checkName(path, origins);
        portion.aim()
                .targetWeight()
                .ifPresent(weight ->
                        checkFirst(weight, origins.of(path, Aspect.SHARE).orElseThrow()));
        assertEquals(
                !(portion.acceptance().weight() instanceof Limit.NotStated),
                origins.of(path, Aspect.LIMIT).isPresent());
    }

    private static void checkTop(CutTree tree, Origins origins) {
        assertEquals(
                tree.streams().size(), origins.all(TreePath.ROOT, Aspect.STREAM).size());
        assertEquals(
                tree.sources(),
                origins.all(TreePath.ROOT, Aspect.SOURCE).stream()
                        .flatMap(origin -> origin.sources().stream())
                        .toList());
        assertEquals(
                tree.carcass().band() instanceof WeightBand.Stated,
                origins.of(TreePath.ROOT, Aspect.BAND).isPresent());
        List<Origin> steps = origins.all(TreePath.ROOT, Aspect.STEP);
        assertEquals(tree.carcass().steps().size(), steps.size());
        for (int i = 0; i < steps.size(); i++) {
            assertEquals(
                    sources(tree.carcass().steps().get(i).sources(), tree),
                    steps.get(i).sources());
        }
    }

    private static void check(Piece piece, Origins origins, CutTree tree) {
        var known = origins.species().pieces(piece.name()).stream()
                .filter(found -> found.name().equals(piece.name()))
                .toList();
        assertEquals(1, known.size(), piece.name().text());
        List<Origin> published = known.get(0).published();
        assertEquals(piece.published().size(), published.size());
        for (int i = 0; i < published.size(); i++) {
            checkFirst(piece.published().get(i).expected(), published.get(i));
            assertEquals(
                    sources(piece.published().get(i).sources(), tree),
                    published.get(i).sources());
        }
        piece.parts().forEach(part -> check(part, origins, tree));
    }

    private static List<Source> sources(List<TradeName> names, CutTree tree) {
        return names.stream().map(name -> tree.source(name).orElseThrow()).toList();
    }

    /** The first amount in the words is that of the value; a share that gives way to a revision has no words of its own. */
    private static void checkFirst(Expected expected, Origin origin) {
        if (origin.words().startsWith("difference ")) {
            assertEquals(1, origin.revised().size(), "it was a figure before");
            return;
        }
        Quantity first = expected instanceof Expected.CentralRange range
                ? range.low()
                : expected instanceof Expected.PlusMinus spread ? spread.value() : ((Expected.Mean) expected).value();
        Matcher amount = AMOUNT.matcher(origin.words());
        assertTrue(amount.find(), origin::words);
        if (amount.group(3) == null) {
            assertEquals(
                    0, new BigDecimal(amount.group(1)).compareTo(first.amount().abs()), origin::words);
        }
    }

    @Example
    void what_is_in_no_tree_comes_from_nowhere() {
        Origins origins = Specifications.compile(Specifications.house().get(0))
                .orElseThrow()
                .origins();
        TreePath nowhere = TreePath.ROOT.then(TradeName.of("tail of the eye"));
        for (Aspect aspect : Aspect.values()) {
            assertEquals(List.of(), origins.all(nowhere, aspect));
        }
        assertEquals(List.of(), origins.species().pieces(TradeName.of("tail of the eye")));
    }
}
