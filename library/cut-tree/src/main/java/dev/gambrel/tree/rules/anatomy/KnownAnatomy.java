package dev.gambrel.tree.rules.anatomy;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Bones and muscles that are named are those of the species. Where it declares none, nothing is said. */
public final class KnownAnatomy implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        PieceIndex pieces = inspection.pieces();
        if (pieces.boneNames().isEmpty()) {
            return;
        }
        List<TradeName> contents = Stream.concat(pieces.boneNames().stream(), pieces.muscleNames().stream())
                .toList();
        for (Site site : inspection.sites()) {
            if (!site.isCarcass()) {
                checkContents(site, contents, inspection, found);
            }
            for (Part part : site.parts()) {
                if (part instanceof Part.Bone bone) {
                    checkBones(site, bone, inspection, found);
                }
            }
        }
    }

    private static void checkBones(Site site, Part.Bone bone, Inspection inspection, Consumer<Diagnostic> found) {
        for (TradeName name : bone.bones()) {
            if (inspection.pieces().bone(name).isEmpty()) {
                Diagnostic finding = Diagnostic.of(TreeCode.UNKNOWN_BONE, site.at(bone, Aspect.NAME))
                        .with("species", inspection.tree().species().name())
                        .with("bone", name);
                found.accept(Findings.suggest(
                        finding,
                        name,
                        inspection.pieces().boneNames(),
                        inspection.pieces().allBones()));
            }
        }
    }

    private static void checkContents(
            Site site, List<TradeName> known, Inspection inspection, Consumer<Diagnostic> found) {
        PieceIndex pieces = inspection.pieces();
        List<TradeName> contents = site.cut().description().contents();
        for (int i = 0; i < contents.size(); i++) {
            TradeName name = contents.get(i);
            if (pieces.bone(name).isEmpty() && pieces.muscle(name).isEmpty()) {
                Diagnostic finding = Diagnostic.of(
                                TreeCode.UNKNOWN_CONTENTS, new Place.InTree(site.path(), Aspect.CONTENTS, i))
                        .with("species", inspection.tree().species().name())
                        .with("name", name);
                found.accept(Findings.suggest(finding, name, known));
            }
        }
    }
}
