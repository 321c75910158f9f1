package dev.gambrel.compiler.restate;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Way;
import java.util.List;
import java.util.Set;

/** A tree without the shares that are stated anew, so that what else two trees say can be compared. */
final class MaskedTree {
    private final Set<TreePath> restated;
    private final List<Source> declared;

    private MaskedTree(Set<TreePath> restated, List<Source> declared) {
        this.restated = restated;
        this.declared = declared;
    }

    static CutTree of(CutTree tree, Set<TreePath> restated, List<Source> declared) {
        return new MaskedTree(restated, declared).masked(tree);
    }

    private CutTree masked(CutTree tree) {
        return new CutTree(
                tree.specification(),
                tree.carcass(),
                tree.species(),
                tree.streams(),
                tree.sources().stream()
                        .filter(source -> !declared.contains(source))
                        .toList(),
                parts(TreePath.ROOT, tree.parts()),
                tree.notes());
    }

    private List<Part> parts(TreePath above, List<Part> parts) {
        return parts.stream().map(part -> part(above.then(part.name()), part)).toList();
    }

    private Part part(TreePath path, Part part) {
        Share share = restated.contains(path) ? new Share.NotStated() : part.share();
        if (part instanceof Cut cut) {
            return cut(path, cut, share);
        } else if (part instanceof Way way) {
            return new Way(cut(path, way.work(), way.work().share()), way.choice());
        } else if (part instanceof Part.Bone bone) {
            return new Part.Bone(bone.name(), bone.bones(), share, bone.home(), bone.after());
        } else if (part instanceof Part.Trim trim) {
            return new Part.Trim(trim.name(), trim.rule(), share, trim.home(), trim.after());
        }
        return part instanceof Part.Loss loss ? new Part.Loss(loss.name(), share) : part;
    }

    private Cut cut(TreePath path, Cut cut, Share share) {
        return new Cut(
                cut.name(),
                cut.pieces(),
                share,
                cut.description(),
                parts(path, cut.parts()),
                cut.home(),
                cut.portions());
    }
}
