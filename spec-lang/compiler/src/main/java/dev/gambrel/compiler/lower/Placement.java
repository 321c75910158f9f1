package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Container;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement.Declaration;

/** Whether a line stands where such a line may stand, with braces only where it may hold others. */
final class Placement {
    private Placement() {}

    static boolean fits(Declaration line, Container container, FileReport report) {
        Keyword keyword = line.keyword();
        if (keyword.fits(container)) {
            return true;
        }
        report.add(report.finding(MeaningCode.MISPLACED_LINE, line.keywordSpan())
                .with("line", keyword.word())
                .with("where", container.where())
                .help("It belongs " + keyword.whereItFits() + "."));
        return false;
    }
}
