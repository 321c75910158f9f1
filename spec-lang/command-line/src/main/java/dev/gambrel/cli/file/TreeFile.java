package dev.gambrel.cli.file;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.tree.CutTree;
import java.nio.file.Path;

/** A tree as a file of JSON. */
public final class TreeFile {
    private TreeFile() {}

    /**
     * Writes a tree and says so.
     *
     * @param tree the tree
     * @param read the file that it was read from, which is never written over
     * @param file the file to write
     * @param terminal where it is said
     * @return whether it could be written
     * @throws WrongUsage if both files are one
     */
    public static ExitStatus write(CutTree tree, String read, String file, Terminal terminal) {
        Path target = FileArgument.path(file);
        if (WholeFile.isSame(FileArgument.path(read), target)) {
            throw new WrongUsage("The tree would be written over the specification " + read + "; name another file.");
        }
        if (!WholeFile.write(target, TreeJsonWriter.write(tree))) {
            return WholeFile.couldNot(file, terminal);
        }
        terminal.out().println("The tree was written as JSON to " + Visible.text(file) + ".");
        return ExitStatus.FINE;
    }
}
