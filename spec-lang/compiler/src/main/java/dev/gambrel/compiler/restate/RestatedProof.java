package dev.gambrel.compiler.restate;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Way;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Holds a tree with new shares against the one before, so that nothing is offered that says more or less than it should. */
final class RestatedProof {
    private static final BigDecimal WHOLE = BigDecimal.valueOf(100);

    private final CutTree before;
    private final CutTree after;
    private final Map<TreePath, List<Part>> divided = new HashMap<>();
    private final Map<TreePath, Share> shares = new HashMap<>();

    RestatedProof(CutTree before, CutTree after) {
        this.before = before;
        this.after = after;
        add(TreePath.ROOT, after.parts());
    }

    private void add(TreePath cut, List<Part> parts) {
        divided.put(cut, parts);
        for (Part part : parts) {
            TreePath path = cut.then(part.name());
            shares.put(path, part.share());
            if (part instanceof Cut inner) {
                add(path, inner.parts());
            } else if (part instanceof Way way) {
                add(path, way.work().parts());
            }
        }
    }

    /** What is wrong, in a sentence; nothing where all is as it should be. */
    Optional<String> fault(List<RestatedCut> cuts, List<Source> declared) {
        Set<TreePath> restated = new HashSet<>();
        for (RestatedCut cut : cuts) {
            for (RestatedShare part : cut.parts()) {
                restated.add(part.part());
                if (!states(part)) {
                    return Optional.of(part.part() + " would not state " + part.percent() + " %.");
                }
            }
            if (!closes(cut.cut())) {
                return Optional.of("The shares of " + cut.cut() + " would not add up to 100 %.");
            }
        }
        return MaskedTree.of(before, restated, declared).equals(MaskedTree.of(after, restated, declared))
                ? Optional.empty()
                : Optional.of("More would change than shares and sources.");
    }

    private boolean states(RestatedShare part) {
        return shares.get(part.part()) instanceof Share.Stated stated
                && percent(stated).compareTo(part.percent()) == 0;
    }

    private static BigDecimal percent(Share.Stated share) {
        return share.expected().exactMean();
    }

    /** Exactly; a cut with a rest, or with trims alone, closes of itself. */
    private boolean closes(TreePath cut) {
        List<Part> parts = divided.get(cut);
        boolean isDivided = cut.equals(TreePath.ROOT) || parts.stream().anyMatch(part -> part instanceof Cut);
        if (!isDivided || parts.stream().anyMatch(part -> part instanceof Part.Rest)) {
            return true;
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (Part part : parts) {
            sum = part.share() instanceof Share.Stated stated ? sum.add(percent(stated)) : sum;
        }
        return sum.compareTo(WHOLE) == 0;
    }
}
