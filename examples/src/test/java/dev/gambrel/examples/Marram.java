package dev.gambrel.examples;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Way;
import java.nio.file.Path;
import java.util.List;

/** The specifications of Marram Isle Meats. */
final class Marram {
    private static final Path FOLDER = Path.of("marram");

    private Marram() {}

    static Path file(String name) {
        return FOLDER.resolve(name);
    }

    static Result<Compilation> check(String name) {
        return new SpecCompiler().compile(file(name));
    }

    static CutTree tree(String name) {
        return check(name).orElseThrow().tree();
    }

    /** Cuts, ways of working them, bones, trims, losses, rests and portions. */
    static int nodes(List<Part> parts) {
        int nodes = parts.size();
        for (Part part : parts) {
            if (part instanceof Way way) {
                nodes += way.work().portions().size() + nodes(way.work().parts());
            } else if (part instanceof Cut cut) {
                nodes += cut.portions().size() + nodes(cut.parts());
            }
        }
        return nodes;
    }

    /** How many levels lie below the carcass. */
    static int levels(List<Part> parts) {
        int deepest = 0;
        for (Part part : parts) {
            int below = part instanceof Way way ? below(way.work()) : part instanceof Cut cut ? below(cut) : 0;
            deepest = Math.max(deepest, 1 + below);
        }
        return deepest;
    }

    private static int below(Cut cut) {
        return Math.max(levels(cut.parts()), cut.portions().isEmpty() ? 0 : 1);
    }
}
