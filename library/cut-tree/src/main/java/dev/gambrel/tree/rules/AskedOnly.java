package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TermCode;
import java.util.function.Consumer;

/** A requirement asks: what somebody expects, and where trim goes, is the house's business. */
final class AskedOnly implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (!(part.share() instanceof Share.NotStated)) {
                    found.accept(finding(site, part, Aspect.SHARE, "a share"));
                } else if (part.home() instanceof Home.ToStream) {
                    found.accept(finding(site, part, Aspect.STREAM, "a stream that it goes to"));
                }
            }
        }
    }

    private static Diagnostic finding(Site site, Part part, Aspect aspect, String what) {
        return Diagnostic.of(TermCode.EXPECTED_IN_REQUIREMENT, site.at(part, aspect))
                .with("part", part.name())
                .with("what", what)
                .help("Take it out, or write what is accepted as a limit: weight between 600 g and 800 g");
    }
}
