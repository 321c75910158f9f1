package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.code.RevisionCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import java.util.List;

/** Lines that add and leave out, where there is nothing to add to or to leave out of. */
final class StrayChanges {
    private StrayChanges() {}

    static void report(List<Statement> lines, FileReport report) {
        for (Statement statement : lines) {
            if (statement instanceof Declaration line) {
                if (line.keyword() == Keyword.ADD_LINE || line.keyword() == Keyword.OMIT_LINE) {
                    report.add(report.finding(RevisionCode.NOT_A_REVISION, line.keywordSpan())
                            .with("line", line.keyword().word())
                            .help("Write the lines themselves.")
                            .help("Or say at the top which file this revises: revises \"hogget.cuts\""));
                }
                report(line.body(), report);
            }
        }
    }

    /** In a revision, whatever stands in the braces of what is added is new altogether. */
    static void reportWithinAdded(List<Statement> lines, FileReport report) {
        for (Statement statement : lines) {
            if (statement instanceof Declaration line && line.keyword() == Keyword.ADD_LINE) {
                report(line.body(), report);
            } else if (statement instanceof Declaration line) {
                reportWithinAdded(line.body(), report);
            }
        }
    }
}
