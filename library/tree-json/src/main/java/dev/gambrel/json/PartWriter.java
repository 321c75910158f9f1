package dev.gambrel.json;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import java.util.Optional;

/** Writes what leaves a cut. */
final class PartWriter {
    private PartWriter() {}

    static Canonical part(Part part) {
        if (part instanceof Cut cut) {
            return cut(cut);
        }
        if (part instanceof Way way) {
            return way(way);
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
        return withWork(
                named("cut", cut)
                        .putIfStated("pieces", FigureWriter.pieces(cut.pieces()))
                        .putIfStated("share", FigureWriter.share(cut.share())),
                cut);
    }

    /** Of a way that is worked on request only, nothing is said of when. */
    private static Canonical way(Way way) {
        Optional<Canonical> choice = choice(way.choice());
        return withWork(named("way", way).putIfStated("choice", choice), way.work());
    }

    private static Canonical withWork(Canonical.Fields named, Cut cut) {
        return named.putIfStated("description", DescriptionWriter.description(cut.description()))
                .putUnlessEmpty("parts", cut.parts(), PartWriter::part)
                .putIfStated("home", home(cut.home()))
                .putUnlessEmpty("portions", cut.portions(), PartWriter::portion);
    }

    private static Optional<Canonical> choice(Choice choice) {
        if (choice instanceof Choice.AsARule) {
            return Optional.of(Canonical.kind("as a rule"));
        } else if (choice instanceof Choice.OfPieces of) {
            return Optional.of(quantity("share of pieces", of.share()));
        } else if (choice instanceof Choice.When when) {
            return Optional.of(Canonical.kind("when").put("condition", condition(when.condition())));
        }
        return Optional.empty();
    }

    private static Canonical condition(Condition condition) {
        if (condition instanceof Condition.Weighs weighs) {
            String kind = condition instanceof Condition.PieceWeighs ? "piece weighs" : "carcass weighs";
            return Canonical.kind(kind)
                    .putUnlessEmpty(
                            "bounds",
                            weighs.bounds(),
                            bound -> quantity(bound.kind().words(), bound.weight()));
        } else if (condition instanceof Condition.GradeIs is) {
            return Canonical.kind("grade is").put("grade", is.grade()).putUnlessEmpty("values", is.named());
        }
        Condition.GradeFrom from = (Condition.GradeFrom) condition;
        return Canonical.kind("grade from")
                .put("grade", from.grade())
                .put("first", from.first())
                .put("last", from.last());
    }

    private static Canonical quantity(String kind, Quantity quantity) {
        return Canonical.kind(kind)
                .put("amount", quantity.amount())
                .put("unit", quantity.unit().symbol());
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
