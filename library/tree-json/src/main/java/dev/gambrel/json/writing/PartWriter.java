package dev.gambrel.json.writing;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Slicing;
import java.util.ArrayList;
import java.util.List;
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
                    .putIfStated("home", home(bone.home()))
                    .putUnlessEmpty("after", bone.after());
        }
        if (part instanceof Part.Trim trim) {
            return named("trim", trim)
                    .put("rule", rule(trim.rule()))
                    .putIfStated("share", FigureWriter.share(trim.share()))
                    .putIfStated("home", home(trim.home()))
                    .putUnlessEmpty("after", trim.after());
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
            return Optional.of(
                    Canonical.kind("stream").put("stream", stream.stream()).putIfStated("lean", lean(stream.lean())));
        }
        return home instanceof Home.Product ? Optional.of(Canonical.kind("product")) : Optional.empty();
    }

    private static Optional<Canonical> lean(SourceLean lean) {
        return lean instanceof SourceLean.Stated stated
                ? Optional.of(Canonical.fields()
                        .put("percent", FigureWriter.expected(stated.percent()))
                        .putUnlessEmpty("judged", stated.judged().words()))
                : Optional.empty();
    }

    private static Canonical portion(Portion portion) {
        Canonical.Fields fields = Canonical.fields().put("name", portion.name());
        portion.aim().targetWeight().ifPresent(weight -> fields.put("target", FigureWriter.expected(weight)));
        portion.aim().targetThickness().ifPresent(thick -> fields.put("thickness", FigureWriter.expected(thick)));
        if (portion.aim() instanceof Aim.Number aim) {
            fields.put("number", aim.number());
        }
        acceptance(portion.acceptance(), fields);
        slicing(portion.slicing(), fields);
        finish(portion.finish(), fields);
        return fields.putIfStated("endPieces", endPieces(portion.endPieces()))
                .putIfStated("remainder", home(portion.remainder()));
    }

    private static void acceptance(Acceptance acceptance, Canonical.Fields fields) {
        fields.putIfStated("range", FigureWriter.limit(acceptance.weight()))
                .putIfStated("thicknessRange", FigureWriter.limit(acceptance.thickness()))
                .putUnlessEmpty("rules", acceptance.precedence().words())
                .putIfStated("smallest", FigureWriter.measure(acceptance.smallest()));
        if (acceptance.fewest() instanceof Fewest.From from) {
            fields.put(
                    "fewest",
                    Canonical.fields()
                            .put("number", from.number())
                            .put("from", from.whole().words()));
        }
        fields.putIfStated("outside", TermWriter.outside(acceptance.outside()));
    }

    private static void slicing(Slicing slicing, Canonical.Fields fields) {
        fields.putIfStated("kerf", FigureWriter.measure(slicing.kerf()));
        if (slicing.length() instanceof Slicing.Length.Stated length) {
            fields.put("length", FigureWriter.expected(length.expected()));
        }
        fields.putUnlessEmpty("direction", slicing.direction());
    }

    private static void finish(Finish finish, Canonical.Fields fields) {
        fields.putIfStated("binding", binding(finish.binding()));
        if (finish.pack() instanceof Finish.Pack.Together pack) {
            fields.put("pack", Canonical.fields().put("number", pack.number()).put("container", pack.container()));
        }
        fields.putUnlessEmpty(
                "tares",
                finish.tares(),
                tare -> FigureWriter.quantity("amount", tare.weight()).put("of", tare.what()));
    }

    private static Optional<Canonical> binding(Finish.Binding binding) {
        if (binding instanceof Finish.Binding.Tied tied) {
            return Optional.of(Canonical.kind("tied").put("times", tied.times()));
        }
        if (binding instanceof Finish.Binding.TiedEvery every) {
            return Optional.of(Canonical.kind("tied every").put("spacing", length(every.spacing())));
        }
        return binding instanceof Finish.Binding.Netted net
                ? Optional.of(Canonical.kind("netted").put("size", length(net.size())))
                : Optional.empty();
    }

    private static Canonical length(Quantity length) {
        return FigureWriter.quantity("amount", length);
    }

    private static Optional<Canonical> endPieces(Portion.EndPieces ends) {
        if (ends instanceof Portion.EndPieces.Weighed weighed) {
            return Optional.of(Canonical.fields()
                    .put("weight", FigureWriter.expected(weighed.weight()))
                    .putIfStated("home", home(weighed.home())));
        }
        return ends instanceof Portion.EndPieces.Sent sent
                ? Optional.of(Canonical.fields().putIfStated("home", home(sent.home())))
                : Optional.empty();
    }

    private static Canonical rule(TrimRule rule) {
        if (rule instanceof TrimRule.FatCover cover) {
            return Canonical.kind("fat cover")
                    .putUnlessEmpty("limits", cover.limits(), PartWriter::fatLimit)
                    .putUnlessEmpty("left", left(cover.finish()))
                    .putUnlessEmpty("measured", cover.finish().measured());
        }
        if (rule instanceof TrimRule.Removal removal) {
            return Canonical.kind("removal").put("tissue", removal.tissue());
        }
        if (rule instanceof TrimRule.GlandRemoval removal) {
            return Canonical.kind("gland removal").put("gland", removal.gland());
        }
        return Canonical.kind("square off");
    }

    private static List<String> left(TrimRule.FatFinish finish) {
        List<String> words = new ArrayList<>(2);
        if (finish.planed()) {
            words.add("planed");
        }
        if (finish.practicallyFree()) {
            words.add("practically free");
        }
        return words;
    }

    private static Canonical fatLimit(TrimRule.FatLimit limit) {
        return FigureWriter.quantity("atMost", limit.atMost())
                .put("where", limit.where().words());
    }
}
