package dev.gambrel.cli.file;

import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Standing;
import dev.gambrel.tree.Way;
import dev.gambrel.yields.conformance.Conformance;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What was read and checked, in two lines. */
public final class Summary {
    private Summary() {}

    /**
     * Title, revision and species, then what was checked.
     *
     * @param read what was read
     * @param findings what was found in it
     * @return lines, each ended by a line feed
     */
    public static String of(SpecFileReader.Read read, List<Diagnostic> findings) {
        CutTree tree = read.tree();
        return Visible.text(tree.specification().title()) + ", revision "
                + tree.specification().revision() + ", for " + tree.species().name() + "\n"
                + standing(tree.specification().standing()) + checked(read, findings);
    }

    /** What the revision replaces, from when it is in force, and why; nothing where none of them is stated. */
    private static String standing(Standing standing) {
        List<String> said = new ArrayList<>();
        if (standing.replaces() > 0) {
            said.add("replaces revision " + standing.replaces());
        }
        if (standing.from() instanceof Standing.From.Day from) {
            said.add("in force from " + from.day());
        }
        if (!standing.because().isEmpty()) {
            said.add("because: " + Visible.text(standing.because()));
        }
        String line = String.join(", ", said);
        return line.isEmpty() ? "" : line.substring(0, 1).toUpperCase(Locale.ROOT) + line.substring(1) + "\n";
    }

    /**
     * What was checked.
     *
     * @param read what was read
     * @param findings what was found in it
     * @return lines, each ended by a line feed
     */
    public static String checked(SpecFileReader.Read read, List<Diagnostic> findings) {
        List<Part> parts = read.tree().parts();
        if (read.tree().isRequirement()) {
            int asked = Conformance.asked(read.tree()).size();
            return "Checked: a buyer's requirement of " + (asked == 1 ? "1 clause" : asked + " clauses") + " on "
                    + (parts.size() == 1 ? "1 cut" : parts.size() + " cuts")
                    + ": names, units, limits, numbers, landmarks.\nFindings: " + FindingsPrinter.count(findings)
                    + allowed(read) + ".\n";
        }
        String files = read.files() == 1 ? "1 file" : read.files() + " files";
        return "Checked: " + (parts(parts) == 1 ? "1 part" : parts(parts) + " parts") + " on " + (1 + levels(parts))
                + " levels, the carcass counted, in "
                + files + ": shares and their spreads, bones in\nand out, landmarks, glands, where every gram goes, "
                + "published figures. Findings: " + FindingsPrinter.count(findings) + allowed(read) + ".\n";
    }

    private static String allowed(SpecFileReader.Read read) {
        int count = read.allowed().size();
        return count == 0 ? "" : "; allowed with a reason: " + count + (count == 1 ? " warning" : " warnings");
    }

    private static int parts(List<Part> parts) {
        int count = parts.size();
        for (Part part : parts) {
            if (part instanceof Cut cut) {
                count += parts(cut.parts());
            } else if (part instanceof Way way) {
                count += parts(way.work().parts());
            }
        }
        return count;
    }

    private static int levels(List<Part> parts) {
        int deepest = 0;
        for (Part part : parts) {
            List<Part> below =
                    part instanceof Way way ? way.work().parts() : part instanceof Cut cut ? cut.parts() : List.of();
            deepest = Math.max(deepest, 1 + levels(below));
        }
        return deepest;
    }
}
