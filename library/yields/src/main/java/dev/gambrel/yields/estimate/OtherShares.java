package dev.gambrel.yields.estimate;

import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Way;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The same parts with other shares.
 *
 * @param other what takes the place of a share
 */
public record OtherShares(UnaryOperator<Share> other) {
    /**
     * Puts the other shares in, all the way down.
     *
     * @param parts the parts of a cut or of a carcass
     * @return parts of the same names, in the same order
     */
    public List<Part> parts(List<Part> parts) {
        return parts.stream().map(this::part).toList();
    }

    private Part part(Part part) {
        if (part instanceof Cut cut) {
            return cut(cut);
        } else if (part instanceof Way way) {
            return new Way(cut(way.work()), way.choice());
        }
        Share share = other.apply(part.share());
        if (part instanceof Part.Bone bone) {
            return new Part.Bone(bone.name(), bone.bones(), share, bone.home(), bone.after());
        } else if (part instanceof Part.Trim trim) {
            return new Part.Trim(trim.name(), trim.rule(), share, trim.home(), trim.after());
        }
        return part instanceof Part.Loss loss ? new Part.Loss(loss.name(), share) : part;
    }

    private Cut cut(Cut cut) {
        return new Cut(
                cut.name(),
                cut.pieces(),
                other.apply(cut.share()),
                cut.description(),
                parts(cut.parts()),
                cut.home(),
                cut.portions());
    }
}
