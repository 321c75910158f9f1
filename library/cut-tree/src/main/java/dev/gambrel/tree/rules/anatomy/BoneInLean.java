package dev.gambrel.tree.rules.anatomy;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.Optional;
import java.util.function.Consumer;

/** Bone is not put with meat that is said to be lean. */
public final class BoneInLean implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part instanceof Part.Bone bone) {
                    lean(bone.home(), inspection.tree()).ifPresent(stream -> found.accept(finding(site, bone, stream)));
                }
            }
        }
    }

    private static Optional<Stream> lean(Home home, CutTree tree) {
        return home instanceof Home.ToStream to
                ? tree.stream(to.stream()).filter(stream -> stream.lean() instanceof Stream.Lean.Stated)
                : Optional.empty();
    }

    private static Diagnostic finding(Site site, Part.Bone bone, Stream stream) {
        Stream.Lean.Stated lean = (Stream.Lean.Stated) stream.lean();
        return Diagnostic.of(TreeCode.BONE_IN_LEAN, site.at(bone, Aspect.STREAM))
                .with("stream", stream.name())
                .with("lean", lean.percent())
                .with("bones", bone.name())
                .help("Send bones to a stream of their own: stream bones, by-product");
    }
}
