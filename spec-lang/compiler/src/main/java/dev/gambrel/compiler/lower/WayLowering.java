package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.ChoiceReader;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.choice.Grade;

/** A line that says in which way a cut is worked, with its braces; and the grades that conditions ask about. */
final class WayLowering {
    private final Doubt doubt;
    private final CutLowering cuts;

    WayLowering(Doubt doubt, CutLowering cuts) {
        this.doubt = doubt;
        this.cuts = cuts;
    }

    Way way(Located located, TreePath above) {
        Clauses clauses = new Clauses(located);
        TreePath path = above.then(PartLowering.name(located.line()));
        ChoiceReader.Read choice = new ChoiceReader(located.report()).take(clauses);
        if (choice.inDoubt() || located.line().damaged()) {
            doubt.about(path);
        }
        return new Way(
                cuts.rest(located, clauses, path, PieceCount.NOT_STATED, new Share.NotStated()), choice.choice());
    }

    static Grade grade(Located located) {
        Clauses clauses = new Clauses(located);
        clauses.finish();
        return new Grade(
                PartLowering.name(located.line()),
                located.line().names().stream().skip(1).map(Name::text).toList());
    }
}
