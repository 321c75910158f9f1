package dev.gambrel.cli.shares;

import dev.gambrel.cli.shares.report.Proposed;
import dev.gambrel.cli.shares.report.SharesReport;
import dev.gambrel.compiler.restate.RestatedCut;
import dev.gambrel.compiler.restate.RestatedShare;
import dev.gambrel.compiler.restate.RestatedText;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.testedcuts.FoundShares;
import java.util.List;
import java.util.stream.Collectors;

/** The lines that are proposed, as they are read. */
final class ProposedText {
    private ProposedText() {}

    static String of(SharesReport report, Proposed proposed, boolean isPrinted) {
        StringBuilder out = new StringBuilder();
        String single = report.found().stream()
                .filter(shares -> shares.number() == 1 && shares.ownWeight() == 1)
                .map((FoundShares shares) -> SharesText.name(shares.cut().path()))
                .collect(Collectors.joining("; "));
        if (!single.isEmpty()) {
            out.append(Visible.text("Nothing is proposed for " + single
                            + ": what one carcass gave is not what the house gives. With --prior it may be drawn towards what"
                            + " is stated."))
                    .append('\n');
        }
        if (proposed.texts().isEmpty()) {
            out.append("No line is to be changed.\n\n");
            return out.toString();
        }
        spreadsKept(proposed, out);
        out.append("""
                Shares are rounded so that each cut adds up to exactly 100 %; what a rest or a trimmed cut takes follows.
                The specification was read with the new lines and is free of errors. Its revision number stays as it is: raise it when the
                sheet is issued, since weigh sheets name the revision that they were cut by.
                """);
        if (isPrinted) {
            out.append("\nProposed lines, as a patch:\n\n");
            proposed.texts().stream()
                    .map(RestatedText::diff)
                    .flatMap(String::lines)
                    .forEach(line -> out.append(Visible.text(line)).append('\n'));
        }
        return out.append('\n').toString();
    }

    private static void spreadsKept(Proposed proposed, StringBuilder out) {
        List<String> kept = proposed.cuts().stream()
                .map(RestatedCut::parts)
                .flatMap(List::stream)
                .filter(part -> part.spread() instanceof RestatedShare.AsWritten)
                .map(part -> part.part().toString())
                .toList();
        if (!kept.isEmpty()) {
            out.append(Visible.text("The tests do not tell how far these stray; their ± stays as it is written: "
                            + String.join("; ", kept) + "."))
                    .append('\n');
        }
    }
}
