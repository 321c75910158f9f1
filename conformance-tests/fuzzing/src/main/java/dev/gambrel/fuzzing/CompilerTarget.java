package dev.gambrel.fuzzing;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import java.nio.charset.StandardCharsets;

/** From texts to a tree or to errors; and a tree goes into JSON and back, and can be worked out. */
public final class CompilerTarget {
    /** Small enough that files, lines and parts pass them now and then. */
    private static final Limits LIMITS = new Limits(1 << 16, 20, 6, 4, 2_000, 2_000, 50);

    private CompilerTarget() {}

    /**
     * Holds one folder to it.
     *
     * @param file any bytes; {@code Folder} says how they make several files
     */
    public static void fuzzerTestOneInput(byte[] file) {
        Folder folder = Folder.of(new String(file, StandardCharsets.UTF_8));
        SpecCompiler compiler = new SpecCompiler(LIMITS);
        Result<Compilation> result = compiler.compile(folder.first(), folder);
        FindingsHold.all(result.diagnostics());
        Holds.isSame(result, compiler.compile(folder.first(), folder), "what is compiled twice");
        result.value().map(Compilation::tree).ifPresent(TreeHolds::all);
    }
}
