package dev.gambrel.json.writing;

import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.TrimRule;
import java.util.Optional;

/** Writes what leaves a cut. */
final class PartWriter {
    private PartWriter() {}

    static Canonical part(Part part) {
        if (part instanceof Cut cut) {
            return cut(cut);
        }
        if (part instanceof Part.Bone bone) {
            return named("bone", bone)
                    .putUnlessEmpty("bones", bone.bones())
                    .putIfStated("share", FigureWriter.share(bone.share()))
                    .putIfStated("home", home(bone.home()));
        }
        if (part instanceof Part.Trim trim) {
            return named("trim", trim)
                    .put("rule", rule(trim.rule()))
                    .putIfStated("share", FigureWriter.share(trim.share()))
                    .putIfStated("home", home(trim.home()));
        }
        if (part instanceof Part.Loss loss) {
            return named("loss", loss).putIfStated("share", FigureWriter.share(loss.share()));
        }
        return Canonical.kind("rest").putIfStated("home", home(((Part.Rest) part).home()));
    }

    private static Canonical.Fields named(String kind, Part part) {
        return Canonical.kind(kind).put("name", part.name());
    }

    private static Canonical cut(Cut cut) {
        return named("cut", cut)
                .putIfStated("pieces", FigureWriter.pieces(cut.pieces()))
                .putIfStated("share", FigureWriter.share(cut.share()))
                .putIfStated("description", DescriptionWriter.description(cut.description()))
                .putUnlessEmpty("parts", cut.parts(), PartWriter::part)
                .putIfStated("home", home(cut.home()))
                .putUnlessEmpty("portions", cut.portions(), PartWriter::portion);
    }

    private static Optional<Canonical> home(Home home) {
        if (home instanceof Home.ToStream stream) {
            return Optional.of(Canonical.kind("stream").put("stream", stream.stream()));
        }
        return home instanceof Home.Product ? Optional.of(Canonical.kind("product")) : Optional.empty();
    }

    private static Canonical portion(Portion portion) {
        return Canonical.fields()
                .put("name", portion.name())
                .put("target", FigureWriter.expected(portion.target()))
                .putIfStated("range", FigureWriter.range(portion.range()))
                .putIfStated("remainder", home(portion.remainder()));
    }

    private static Canonical rule(TrimRule rule) {
        if (rule instanceof TrimRule.FatCover cover) {
            return Canonical.kind("fat cover").putUnlessEmpty("limits", cover.limits(), PartWriter::fatLimit);
        }
        if (rule instanceof TrimRule.Removal removal) {
            return Canonical.kind("removal").put("tissue", removal.tissue());
        }
        if (rule instanceof TrimRule.GlandRemoval removal) {
            return Canonical.kind("gland removal").put("gland", removal.gland());
        }
        return Canonical.kind("square off");
    }

    private static Canonical fatLimit(TrimRule.FatLimit limit) {
        return FigureWriter.quantity("atMost", limit.atMost())
                .put("where", limit.where().words());
    }
}
