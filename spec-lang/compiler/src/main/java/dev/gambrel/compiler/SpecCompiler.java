package dev.gambrel.compiler;

import dev.gambrel.compiler.lower.Lowering;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * Compiles specifications. Thread-safe; keeps nothing between calls. Time and memory grow in proportion to the text.
 *
 * <pre>{@code
 * Result<Compilation> result = new SpecCompiler().compile(Path.of("hogget.cuts"));
 * result.diagnostics().forEach(finding -> System.out.println(finding.message()));
 * CutTree tree = result.orElseThrow().tree();
 * }</pre>
 */
public final class SpecCompiler {
    private final Limits limits;

    /** A compiler with the usual limits. */
    public SpecCompiler() {
        this(Limits.DEFAULT);
    }

    /**
     * A compiler with limits of one's own.
     *
     * @param limits how much is taken
     */
    public SpecCompiler(Limits limits) {
        this.limits = limits;
    }

    /**
     * Compiles a file; what it uses is looked for in its folder and nowhere else.
     *
     * @param file a specification
     * @return the tree, or what is wrong; a file that cannot be read is a finding too
     */
    public Result<Compilation> compile(Path file) {
        Path name = file.getFileName();
        if (name == null) {
            return Result.failed(List.of(new Found.Refused(FileCode.CANNOT_READ, 0).finding(file.toString(), limits)));
        }
        Found found = FolderSources.read(file, name.toString(), limits);
        if (found instanceof Found.Refused refused) {
            return Result.failed(List.of(refused.finding(name.toString(), limits)));
        }
        try {
            Path folder = file.toAbsolutePath().getParent();
            return compile(((Found.Text) found).text(), FolderSources.of(folder, limits));
        } catch (IOException noFolder) {
            return Result.failed(List.of(new Found.Refused(FileCode.CANNOT_READ, 0).finding(name.toString(), limits)));
        }
    }

    /**
     * Compiles a text.
     *
     * @param text the specification
     * @param sources where the files that it uses are found
     * @return the tree, or what is wrong: all findings, those of one text in the order of their places
     */
    public Result<Compilation> compile(SourceText text, Sources sources) {
        return Lowering.compile(text, sources, limits, Compilation::new);
    }
}
