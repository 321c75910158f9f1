package dev.gambrel.cli;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import java.util.List;

/** What was read and checked, in two lines. */
final class Summary {
    private Summary() {}

    static String of(SpecFileReader.Read read, List<Diagnostic> findings) {
        CutTree tree = read.tree();
        String files = read.files() == 1 ? "1 file" : read.files() + " files";
        return Visible.text(tree.specification().title()) + ", revision "
                + tree.specification().revision() + ", for " + tree.species().name() + "\n"
                + "Checked: " + parts(tree.parts()) + " parts, " + levels(tree.parts()) + " levels deep, in " + files
                + "; shares that close, spreads, bones in and out, landmarks, glands, streams and"
                + " published figures: " + FindingsPrinter.count(findings) + ".\n";
    }

    private static int parts(List<Part> parts) {
        int count = parts.size();
        for (Part part : parts) {
            if (part instanceof Cut cut) {
                count += parts(cut.parts());
            }
        }
        return count;
    }

    private static int levels(List<Part> parts) {
        int deepest = 0;
        for (Part part : parts) {
            deepest = Math.max(deepest, part instanceof Cut cut ? 1 + levels(cut.parts()) : 1);
        }
        return deepest;
    }
}
