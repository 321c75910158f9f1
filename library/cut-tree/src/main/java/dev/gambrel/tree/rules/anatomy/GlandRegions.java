package dev.gambrel.tree.rules.anatomy;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A gland is taken out of the part of the animal that it lies in. */
public final class GlandRegions implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        if (inspection.pieces().glandNames().isEmpty()) {
            return;
        }
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part instanceof Part.Trim trim && trim.rule() instanceof TrimRule.GlandRemoval removal) {
                    checkGland(site, trim, removal.gland(), inspection, found);
                }
            }
        }
    }

    private static void checkGland(
            Site site, Part.Trim trim, TradeName gland, Inspection inspection, Consumer<Diagnostic> found) {
        Optional<TradeName> known = inspection.pieces().gland(gland);
        if (known.isEmpty()) {
            Diagnostic finding = Diagnostic.of(TreeCode.UNKNOWN_GLAND, site.at(trim, Aspect.NAME))
                    .with("species", inspection.tree().species().name())
                    .with("gland", gland);
            found.accept(Findings.suggest(finding, gland, inspection.pieces().glandNames()));
            return;
        }
        List<PieceIndex.Known> lies = inspection.pieces().piecesWithGland(known.get());
        Optional<PieceIndex.Known> here =
                site.upward().stream().flatMap(s -> s.piece().stream()).findFirst();
        if (here.isPresent() && lies.stream().noneMatch(piece -> related(piece, here.get()))) {
            found.accept(Diagnostic.of(TreeCode.GLAND_ELSEWHERE, site.at(trim, Aspect.NAME))
                    .with("gland", gland)
                    .with("where", lies.get(0).piece().name())
                    .with("cut", site.name())
                    .help("Name the gland of this part, or move the line to the "
                            + lies.get(0).piece().name() + "."));
        }
    }

    private static boolean related(PieceIndex.Known one, PieceIndex.Known other) {
        return one.isWithin(other.piece()) || other.isWithin(one.piece());
    }
}
