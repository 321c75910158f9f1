package dev.gambrel.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.internal.grammar.GambrelParser.FileContext;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
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
import software.amazon.smithy.model.Model;

/** From text to something validated, beside the bare parse of the same text and beside two peers on the same content. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 15, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@State(Scope.Benchmark)
public class ReadingBenchmark {
    /** How many parts the sheet has. */
    @Param({"150", "10000"})
    public int parts;

    private final SpecCompiler compiler = new SpecCompiler();
    private final YamlReading yaml = new YamlReading();
    private final SmithyReading smithy = new SmithyReading();
    private Sheet sheet;

    /** Writes the sheet in all languages and sees that each reads it without a finding. */
    @Setup
    public void prepare() {
        sheet = Sheet.of(parts);
        bareParse();
        yamlAndSchema();
        smithyAssemble();
    }

    /** Text to validated tree. */
    @Benchmark
    public Result<Compilation> compile() {
        return compiler.compile(sheet.text(), Sources.none());
    }

    /** The same text to ANTLR's parse tree. */
    @Benchmark
    public FileContext bareParse() {
        return BareParse.of(sheet.text().text());
    }

    /** The same content in YAML to validated nodes. */
    @Benchmark
    public JsonNode yamlAndSchema() {
        return yaml.read(sheet.yaml());
    }

    /** The same content in Smithy's language to a validated model. */
    @Benchmark
    public Model smithyAssemble() {
        return smithy.read(sheet.smithy());
    }
}
