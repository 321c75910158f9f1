package dev.gambrel.cli.compare;

import dev.gambrel.cli.compare.report.ComparedFile;
import dev.gambrel.cli.compare.report.ComparisonReport;
import dev.gambrel.cli.compare.report.ComparisonReport.Weights;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.limits.Limits;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Specification;
import dev.gambrel.yields.comparison.Change;
import dev.gambrel.yields.comparison.Effect;
import dev.gambrel.yields.comparison.PossibleRename;
import dev.gambrel.yields.comparison.Said;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What differs, as it is read on paper.
 *
 * @param report what was compared
 * @param unit the unit of weights
 * @param decimals their places after the point
 * @param all whether every difference is shown
 */
record CompareText(ComparisonReport report, Unit unit, int decimals, boolean all) {
    String text() {
        StringBuilder out = new StringBuilder();
        out.append("before: ").append(named(report.before())).append('\n');
        out.append("after:  ").append(named(report.after())).append("\n\n");
        if (report.comparison().isEmpty()) {
            return out.append("Nothing differs in meaning or in words.\n").toString();
        }
        out.append(summary()).append('\n');
        for (Effect effect : Effect.values()) {
            effect(effect, report.comparison().changes(effect), out);
        }
        renames(report.comparison().renames(), out);
        weights(out);
        return out.toString();
    }

    private static String named(ComparedFile file) {
        Specification specification = file.tree().specification();
        return Visible.text(specification.title() + ", revision " + specification.revision() + ", " + file.name());
    }

    private String summary() {
        String counted = List.of(Effect.values()).stream()
                .filter(effect -> !report.comparison().changes(effect).isEmpty())
                .map(effect -> effect.words() + " "
                        + report.comparison().changes(effect).size())
                .collect(Collectors.joining(", "));
        int count = report.comparison().changes().size();
        return (count == 1 ? "1 difference: " : count + " differences: ") + counted + "\n";
    }

    private void effect(Effect effect, List<Change> changes, StringBuilder out) {
        if (changes.isEmpty()) {
            return;
        }
        out.append(effect.words()).append(": ").append(effect.meaning()).append('\n');
        int shown = shown(changes);
        changes.subList(0, shown).forEach(change -> change(change, out));
        more(changes.size() - shown, out);
        out.append('\n');
    }

    private int shown(List<?> found) {
        return all ? found.size() : Math.min(found.size(), Limits.DEFAULT.shown());
    }

    private static void more(int left, StringBuilder out) {
        if (left > 0) {
            out.append("  and ").append(left).append(" more; --all shows them\n");
        }
    }

    private void change(Change change, StringBuilder out) {
        out.append("  ")
                .append(Visible.text(change.of() + ", " + change.what()))
                .append('\n');
        said("was", change.was(), report.before(), out);
        said("is ", change.is(), report.after(), out);
        change.givesWay()
                .forEach(part -> out.append("    ")
                        .append(Visible.text(
                                part.equals(change.path().parent()) ? "what is left of " + part : part.toString()))
                        .append(" makes up for it\n"));
    }

    private static void said(String when, Said said, ComparedFile in, StringBuilder out) {
        String words = said instanceof Said.Stated stated
                ? stated.words()
                : said instanceof Said.NotThere ? "not there" : "not stated";
        out.append("    ")
                .append(when)
                .append(' ')
                .append(Visible.text(words))
                .append("  [")
                .append(place(in, said.place()))
                .append("]\n");
    }

    /** A tree in JSON has no lines that a person wrote; the address above says where. */
    private static String place(ComparedFile file, Place.InTree place) {
        return file.written().apply(place) instanceof Place.Written written
                ? Visible.text(written.text().text().name()) + ", line "
                        + written.text()
                                .text()
                                .position(written.text().span().start())
                                .line()
                : Visible.text(file.name());
    }

    private void renames(List<PossibleRename> renames, StringBuilder out) {
        int shown = shown(renames);
        renames.subList(0, shown).forEach(rename -> rename(rename, out));
        more(renames.size() - shown, out);
        out.append(renames.isEmpty() ? "" : "\n");
    }

    private static void rename(PossibleRename rename, StringBuilder out) {
        String asked = "Renamed? " + rename.was() + " is gone and " + rename.is() + " is new, and " + rename.because();
        out.append(Visible.text(asked)).append(".\n");
    }

    private void weights(StringBuilder out) {
        if (report.yields() instanceof Weights.WorkedOut worked) {
            new WeightLines(unit, decimals).print(worked, out);
        } else {
            out.append(Visible.text(((Weights.NotWorkedOut) report.yields()).because()))
                    .append('\n');
        }
    }
}
