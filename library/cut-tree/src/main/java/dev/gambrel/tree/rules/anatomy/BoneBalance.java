package dev.gambrel.tree.rules.anatomy;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.Sites;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * What goes in comes out: a bone is taken only from a cut that it entered, none is left in what is called boneless, and
 * none vanishes from what is divided completely.
 */
public final class BoneBalance implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<Site, List<Site>> below = new IdentityHashMap<>();
        for (Site site : inspection.sites()) {
            if (!site.isCarcass()) {
                below.computeIfAbsent(site.above(), s -> new ArrayList<>()).add(site);
            }
        }
        for (Site site : inspection.sites()) {
            checkTaken(site, inspection.pieces(), found);
            if (!site.isCarcass() && !site.isUnsure()) {
                checkLeft(site, below.getOrDefault(site, List.of()), inspection.pieces(), found);
            }
        }
    }

    private static void checkTaken(Site site, PieceIndex pieces, Consumer<Diagnostic> found) {
        Optional<Set<TradeName>> bones =
                site.upward().stream().flatMap(s -> s.bonesIn().stream()).findFirst();
        if (bones.isEmpty()) {
            return;
        }
        Set<TradeName> left = new LinkedHashSet<>(bones.get());
        Set<TradeName> lines = new HashSet<>();
        for (Part part : site.parts()) {
            boolean isTwoLinesOfOneName = !lines.add(part.name());
            if (part instanceof Part.Bone bone && !isTwoLinesOfOneName) {
                for (TradeName name : bone.bones()) {
                    Optional<TradeName> known = pieces.bone(name);
                    if (known.isPresent() && !left.remove(known.get())) {
                        found.accept(neverEntered(site, bone, name, known.get(), pieces));
                    }
                }
            }
        }
    }

    private static Diagnostic neverEntered(
            Site site, Part.Bone bone, TradeName name, TradeName known, PieceIndex pieces) {
        Diagnostic finding = Diagnostic.of(TreeCode.BONE_NEVER_ENTERED, site.at(bone, Aspect.NAME))
                .with("bone", name)
                .with("cut", site.name());
        for (Site above : site.upward()) {
            for (Part part : above.parts()) {
                if (part == bone) {
                    break;
                } else if (part instanceof Part.Bone earlier
                        && earlier.bones().stream().anyMatch(b -> pieces.bone(b).equals(Optional.of(known)))) {
                    return finding.related(
                                    above.at(earlier, Aspect.NAME), "it has left the " + above.name() + " here already")
                            .help("Take one of the two lines out: a bone leaves once.");
                }
            }
        }
        return finding.help("Move the line to the cut that the bone lies in, or name the right bone.")
                .help(
                        "If the house cuts so that it does lie here, say in the braces all the bones that are in it: contains "
                                + all(site, name));
    }

    /** What "contains" must list, since it takes the place of what the species says. */
    private static String all(Site site, TradeName bone) {
        Set<TradeName> all = new LinkedHashSet<>(site.bonesIn().orElse(Set.of()));
        all.add(bone);
        return all.stream().map(TradeName::text).collect(Collectors.joining(", "));
    }

    private static void checkLeft(Site site, List<Site> below, PieceIndex pieces, Consumer<Diagnostic> found) {
        if (site.bonesIn().isEmpty() || site.hasWays()) {
            return;
        }
        Set<TradeName> left = new LinkedHashSet<>(site.bonesIn().get());
        left.removeAll(Sites.takenOut(site, pieces));
        for (Site part : below) {
            if (part.bonesIn().isEmpty() && part.cut().description().boneState() != BoneState.BONELESS) {
                return;
            }
            left.removeAll(part.bonesIn().orElse(Set.of()));
        }
        if (left.isEmpty()) {
            return;
        }
        if (site.boneState() == BoneState.BONELESS) {
            found.accept(leftIn(site, left));
        } else if (site.isDivided() && site.parts().stream().noneMatch(part -> part instanceof Part.Rest)) {
            left.forEach(bone -> found.accept(unaccounted(site, bone)));
        }
    }

    private static Diagnostic leftIn(Site site, Set<TradeName> left) {
        TradeName first = left.iterator().next();
        return Diagnostic.of(TreeCode.BONE_LEFT_IN, site.at(Aspect.BONE_STATE))
                .with("cut", site.name())
                .with("bones", Findings.list(left))
                .help("Take each out with a line of its own, such as: bone " + first + " 7 % -> bones")
                .help("Or write bone in instead of boneless.");
    }

    private static Diagnostic unaccounted(Site site, TradeName bone) {
        return Diagnostic.of(TreeCode.BONE_UNACCOUNTED, site.at(Aspect.NAME))
                .with("bone", bone)
                .with("cut", site.name())
                .help("Write a line such as: bone " + bone + " 7 % -> bones")
                .help("Or, if a part keeps it, say so there: contains " + bone);
    }
}
