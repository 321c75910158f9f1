package dev.gambrel.examples;

import dev.gambrel.batches.Batch;
import dev.gambrel.batches.BatchFiles;
import dev.gambrel.batches.BatchOrder;
import dev.gambrel.batches.BatchResult;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.working.Working;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Works out a file of carcasses: prints what each gives, and tells which rows are refused and why. */
public final class BatchOfCarcasses {
    private BatchOfCarcasses() {}

    /**
     * Prints what each carcass gives, then what was wrong with the others.
     *
     * @param args the specification and the carcasses, such as {@code marram/hogget.cuts marram/kills.csv}
     * @throws IOException if a file cannot be read
     */
    public static void main(String[] args) throws IOException {
        CutTree tree =
                new SpecCompiler().compile(Path.of(args[0])).orElseThrow().tree();
        BatchOrder order = BatchOrder.PLAIN.carrying(TradeName.of("tag")).onAllThreads();
        try (InputStream in = Files.newInputStream(Path.of(args[1]))) {
            BatchFiles files = BatchFiles.reading("kills.csv", in).writing(System.out);
            BatchResult result =
                    Batch.run(tree, Working.AS_WRITTEN, order, files).orElseThrow();
            result.shown().forEach(finding -> System.out.println(finding.code().id() + ": " + finding.message()));
            System.out.println(result.rows() + " rows, " + result.refused() + " refused");
        }
    }
}
