package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.term.Judged;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** The lean of what goes to a stream is judged as the stream's is; where the stream states none, as that of the first source. */
final class JudgedAlike implements Rule {
    /** How the lean of a stream is judged, and who says so. */
    private record Said(Judged judged, String who, Place at) {}

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<TradeName, Said> said = new HashMap<>();
        List<Stream> streams = inspection.tree().streams();
        for (int i = 0; i < streams.size(); i++) {
            if (streams.get(i).lean() instanceof Stream.Lean.Stated lean) {
                Place at = new Place.InTree(TreePath.ROOT, Aspect.LEAN, i);
                said.putIfAbsent(streams.get(i).name(), new Said(lean.judged(), "the stream", at));
            }
        }
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part.home() instanceof Home.ToStream to && to.lean() instanceof SourceLean.Stated lean) {
                    check(part, site.at(part, Aspect.LEAN), to, lean.judged(), said, found);
                }
            }
        }
    }

    private static void check(
            Part part,
            Place at,
            Home.ToStream to,
            Judged judged,
            Map<TradeName, Said> said,
            Consumer<Diagnostic> found) {
        Said first = said.putIfAbsent(to.stream(), new Said(judged, part.name().text(), at));
        if (first != null && first.judged() != judged) {
            found.accept(Diagnostic.of(TreeCode.SOURCE_JUDGED_APART, at)
                    .with("part", part.name())
                    .with("stream", to.stream())
                    .with("judged", words(judged))
                    .with("other", first.who())
                    .with("otherwise", words(first.judged()))
                    .related(first.at(), words(first.judged()) + " here")
                    .help("Judge both by eye, or have both analysed, and write visual or chemical after each figure."));
        }
    }

    private static String words(Judged judged) {
        return judged == Judged.NOT_STATED ? "not said to be visual or chemical" : judged.words();
    }
}
