package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Allowance;
import java.util.ArrayList;
import java.util.List;

/** The warnings that allow lines accept, those at the top first, and where each is written. */
final class AllowanceLowering {
    private final List<Allowance> allowances = new ArrayList<>();
    private final List<Located> lines = new ArrayList<>();

    AllowanceLowering(Program program) {
        program.all(Keyword.ALLOW_LINE).forEach(line -> add(line, TreePath.ROOT));
        program.parts().forEach(part -> body(part, TreePath.ROOT));
    }

    private void body(Located part, TreePath above) {
        if (part.line().body().isEmpty()) {
            return;
        }
        TreePath path = above.then(PartLowering.name(part.line()));
        for (Statement statement : part.line().body()) {
            if (statement instanceof Declaration line) {
                Located inner = new Located(line, part.report());
                if (line.keyword() == Keyword.ALLOW_LINE) {
                    add(inner, path);
                } else {
                    body(inner, path);
                }
            }
        }
    }

    /** A line too damaged to name a warning has been reported. */
    private void add(Located located, TreePath path) {
        Clauses clauses = new Clauses(located);
        String reason =
                clauses.one(Clause.Text.class, "why").map(Clause.Text::text).orElse("");
        clauses.finish();
        if (!located.line().names().isEmpty()) {
            allowances.add(new Allowance(path, finding(located.line()), reason));
            lines.add(located);
        }
    }

    /** "outside published" is outside-published. */
    private static String finding(Declaration line) {
        return PartLowering.name(line).text().replace(' ', '-');
    }

    List<Allowance> allowances() {
        return allowances;
    }

    /** The lines, in the order of the allowances. */
    List<Located> lines() {
        return lines;
    }
}
