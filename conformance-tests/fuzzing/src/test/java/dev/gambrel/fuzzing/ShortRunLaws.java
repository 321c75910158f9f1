package dev.gambrel.fuzzing;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** A short run without a fuzzer: seeds cut, joined and spoilt at random. */
class ShortRunLaws {
    private static final int MOST_BYTES = 6_000;

    private static Arbitrary<byte[]> spoilt(Target target) {
        List<byte[]> seeds = target.seeds().stream().map(Target::bytes).toList();
        return Arbitraries.longs().map(seed -> spoilt(seeds, new Random(seed)));
    }

    private static byte[] spoilt(List<byte[]> seeds, Random random) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int pieces = 1 + random.nextInt(3); pieces > 0; pieces--) {
            byte[] seed = seeds.get(random.nextInt(seeds.size()));
            int from = random.nextInt(3) > 0 ? 0 : random.nextInt(seed.length + 1);
            int to = random.nextInt(3) > 0 ? seed.length : from + random.nextInt(seed.length - from + 1);
            out.write(seed, from, Math.max(0, Math.min(to - from, MOST_BYTES - out.size())));
        }
        byte[] spoilt = out.toByteArray();
        for (int i = random.nextInt(5); i > 0 && spoilt.length > 0; i--) {
            spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
        }
        return spoilt;
    }

    @Property(tries = 500, shrinking = ShrinkingMode.BOUNDED)
    void words(@ForAll("words") byte[] file) {
        Target.WORDS.holds(file);
    }

    @Provide
    Arbitrary<byte[]> words() {
        return spoilt(Target.WORDS);
    }

    @Property(tries = 500, shrinking = ShrinkingMode.BOUNDED)
    void parser(@ForAll("parser") byte[] file) {
        Target.PARSER.holds(file);
    }

    @Provide
    Arbitrary<byte[]> parser() {
        return spoilt(Target.PARSER);
    }

    @Property(tries = 500, shrinking = ShrinkingMode.BOUNDED)
    void compiler(@ForAll("compiler") byte[] file) {
        Target.COMPILER.holds(file);
    }

    @Provide
    Arbitrary<byte[]> compiler() {
        return spoilt(Target.COMPILER);
    }

    @Property(tries = 500, shrinking = ShrinkingMode.BOUNDED)
    void formatter(@ForAll("formatter") byte[] file) {
        Target.FORMATTER.holds(file);
    }

    @Provide
    Arbitrary<byte[]> formatter() {
        return spoilt(Target.FORMATTER);
    }

    @Property(tries = 500, shrinking = ShrinkingMode.BOUNDED)
    void tree_json(@ForAll("treeJson") byte[] file) {
        Target.TREE_JSON.holds(file);
    }

    @Provide
    Arbitrary<byte[]> treeJson() {
        return spoilt(Target.TREE_JSON);
    }

    @Property(tries = 500, shrinking = ShrinkingMode.BOUNDED)
    void carcasses(@ForAll("carcasses") byte[] file) {
        Target.CARCASSES.holds(file);
    }

    @Provide
    Arbitrary<byte[]> carcasses() {
        return spoilt(Target.CARCASSES);
    }

    @Property(tries = 500, shrinking = ShrinkingMode.BOUNDED)
    void sheets(@ForAll("sheets") byte[] file) {
        Target.SHEETS.holds(file);
    }

    @Provide
    Arbitrary<byte[]> sheets() {
        return spoilt(Target.SHEETS);
    }

    @Property(tries = 500, shrinking = ShrinkingMode.BOUNDED)
    void conformance(@ForAll("conformance") byte[] file) {
        Target.CONFORMANCE.holds(file);
    }

    @Provide
    Arbitrary<byte[]> conformance() {
        return spoilt(Target.CONFORMANCE);
    }
}
