package dev.gambrel.benchmarks;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A tree to JSON, and back to a tree that keeps every rule. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 15, time = 2)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@State(Scope.Benchmark)
public class JsonBenchmark {
    /** The JSON of a large tree is longer than the usual limit on a file. */
    private static final Limits LARGE = new Limits(
            16 << 20,
            Limits.DEFAULT.nesting(),
            Limits.DEFAULT.files(),
            Limits.DEFAULT.useDepth(),
            Limits.DEFAULT.declarations(),
            Limits.DEFAULT.nodes(),
            Limits.DEFAULT.shown());

    /** How many parts the tree has. */
    @Param({"150", "10000"})
    public int parts;

    private CutTree tree;
    private byte[] json;

    /** Makes the tree and its JSON, and sees that the JSON reads back as the same tree. */
    @Setup
    public void prepare() {
        tree = Sheet.of(parts).tree();
        json = treeToJson();
        if (!jsonToTree().orElseThrow().equals(tree)) {
            throw new IllegalStateException("JSON does not read back as the tree that it was written from");
        }
    }

    /** Tree to bytes. */
    @Benchmark
    public byte[] treeToJson() {
        return TreeJsonWriter.write(tree).getBytes(StandardCharsets.UTF_8);
    }

    /** Bytes to validated tree. */
    @Benchmark
    public Result<CutTree> jsonToTree() {
        return TreeJsonReader.read("sheet.json", json, LARGE);
    }
}
