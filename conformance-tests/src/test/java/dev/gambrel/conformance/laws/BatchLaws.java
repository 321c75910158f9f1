package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchSums;
import dev.gambrel.yields.batch.BatchTotal;
import dev.gambrel.yields.batch.BatchWorker;
import dev.gambrel.yields.batch.Carcasses;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.working.Pairs;
import dev.gambrel.yields.working.Working;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A batch gives for every carcass what the carcass gives by itself, whatever decides over its shares. Shares are invented. */
class BatchLaws {
    private static final String HOGGET = """
            language 1
            use "catalogue:sheep"
            use "catalogue:lamb equations"
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 12 kg to 30 kg
            from warm to cold, loss chill shrink 2.0 % ± 0.4 %
            grade season, summer, winter
            grade fat class, 1, 2, 3L, 3H, 4L, 4H, 5
            stream mince, saleable
            stream diced, saleable
            stream bones, by-product
            stream bin, waste
            """;

    private static final String WAYS = HOGGET + """
            cut leg, two per carcass, 33 % ± 0.9 % {
              worked as small, when a piece is under 3.5 kg {
                bone femur 20 % ± 1 % -> bones
                rest -> diced
              }
              worked as large, as a rule {
                cut topside 21 % ± 0.9 % {
                  worked as dice, when a piece is at most 0.9 kg -> diced
                  worked as steaks, when a piece is over 0.9 kg
                }
                bone femur 19 % ± 1 % -> bones
                rest -> mince
              }
            }
            cut shoulder, two per carcass, 30 % ± 1 % {
              worked as winter joint, when season is winter
              worked as summer cut, when season is summer {
                cut neck end 30 %
                rest -> mince
              }
            }
            cut saddle, one per carcass, 20 % {
              worked as trimmed hard, when fat class is 3H to 5 {
                trim fat to at most 3 mm at any point 12 % ± 2 % -> bin
              }
              worked as plain, as a rule {
                worked as light, when the carcass is under 20 kg -> mince
                worked as heavy, when the carcass is at least 20 kg
              }
            }
            rest -> mince
            """;

    private static final String ESTIMATES = HOGGET + """
            measure depth, in mm, 1 mm to 40 mm
            measure muscling, 1 = thin, 2 = average, 3 = thick
            estimate score = 4.0 per in × depth - 1.0 × muscling
            estimate whole score = score, at least 1, at least 2 for muscling = thin, at most 4, decimals dropped
            estimate legs = 30 % - 0.4 % per mm × depth + 1 % × whole score, ± 0.9 %
            estimate trim = 4 % + 100 % × depth / (depth + 400 mm) - 0.02 % per kg × warm weight, for warm weight 10 kg to 40 kg

            cut loin, two per carcass, estimated by lamb retail cuts
            cut leg, two per carcass, estimated by legs {
              trim fat to at most 3 mm at any point, estimated by trim -> bin
              bone femur 19 % ± 1 % -> bones
            }
            cut saddle, one per carcass, 12 % {
              worked as fat, when a piece is under 4.2 kg {
                trim fat to at most 3 mm at any point, estimated by trim -> bin
              }
              worked as lean, as a rule
            }
            rest -> mince
            """;

    private static final String PORK = """
            language 1
            use "catalogue:pig"
            use "catalogue:pork equations"
            specification "Marram side" revision 1 for pig
            carcass warm, 60 kg to 120 kg
            stream lean, saleable
            stream fat and bone, by-product
            cut one half, estimated by "lean, EU 2020" -> lean
            cut other half, 5 % -> lean {
              trim fat to at most 3 mm at any point, estimated by fat-free lean share -> fat and bone
            }
            rest -> fat and bone
            """;

    private static CutTree compiled(String text) {
        return new SpecCompiler()
                .compile(new SourceText("batch.cuts", text), Sources.none())
                .orElseThrow()
                .tree();
    }

    @Provide
    Arbitrary<BatchPlan> plans() {
        return Arbitraries.of(
                plan(WAYS, Basis.COLD),
                plan(WAYS, Basis.WARM),
                plan(WAYS, Basis.COLD, Working.AS_WRITTEN.with(new Pairs(0.4))),
                plan(ESTIMATES, Basis.COLD),
                plan(ESTIMATES, Basis.WARM),
                plan(PORK, Basis.WARM));
    }

    private static BatchPlan plan(String text, Basis basis) {
        return plan(text, basis, Working.AS_WRITTEN);
    }

    private static BatchPlan plan(String text, Basis basis, Working working) {
        return BatchPlan.of(compiled(text), working, basis).orElseThrow();
    }

    /** Weights and readings of a figure or two, so that limits are met; some missing, some out of reach. */
    private static Carcasses anyCarcasses(BatchPlan plan, int n, Random random) {
        double[] kilograms = new double[n];
        Arrays.setAll(
                kilograms, i -> random.nextInt(40) == 0 ? random.nextInt(3) - 1 : 10 + random.nextInt(1000) / 10.0);
        int[][] grades = plan.grades().stream()
                .map(grade -> random.ints(n, -1, grade.values().size()).toArray())
                .toArray(int[][]::new);
        double[][] readings = plan.readings().stream()
                .map(name -> random.ints(n, -2, 400)
                        .mapToDouble(value -> random.nextInt(20) == 0 ? Double.NaN : value / 10.0)
                        .toArray())
                .toArray(double[][]::new);
        return new Carcasses(kilograms, grades, readings);
    }

    @Property(tries = 60)
    void each_carcass_is_what_it_is_by_itself(@ForAll("plans") BatchPlan plan, @ForAll Random random) {
        int n = 40;
        Carcasses carcasses = anyCarcasses(plan, n, random);
        byte[] notes = new byte[n];
        double[] weights = new double[n * plan.size()];
        plan.worker().weights(carcasses, 0, n, notes, weights, 0);
        for (int i = 0; i < n; i++) {
            Result<ExpectedYields> alone = plan.alone(carcasses, i, Unit.KILOGRAM);
            assertEquals(alone.value().isEmpty(), (notes[i] & BatchWorker.REFUSED) != 0);
            if (alone.value().isPresent()) {
                assertSame(plan, alone.value().get(), weights, i * plan.size());
                boolean warned = alone.diagnostics().stream()
                        .anyMatch(finding -> finding.code().id().equals("G1002"));
                assertEquals(warned, (notes[i] & BatchWorker.OUTSIDE_BAND) != 0);
            }
        }
    }

    private static void assertSame(BatchPlan plan, ExpectedYields alone, double[] weights, int at) {
        Map<String, Double> rows = new HashMap<>();
        for (YieldRow row : alone.rows()) {
            row.allPieces().ifPresent(all -> rows.put(key(row.kind(), row.level(), row.path()), all.mean()));
        }
        double carcass = alone.given().mass().value();
        for (int v = 0; v < plan.size(); v++) {
            Node node = plan.node(v);
            double expected = rows.getOrDefault(key(node.kind(), node.level(), node.path()), 0.0);
            assertEquals(expected, weights[at + v], 1e-12 * carcass, node::name);
        }
    }

    private static String key(Kind kind, int level, Object path) {
        return kind + " " + (kind == Kind.CARCASS ? level : "") + path;
    }

    @Property(tries = 60)
    void outcomes_are_together_what_was_weighed_and_not_refused(
            @ForAll("plans") BatchPlan plan, @ForAll Random random) {
        int n = 200;
        Carcasses carcasses = anyCarcasses(plan, n, random);
        byte[] notes = new byte[n];
        BatchSums sums = plan.sums();
        plan.worker().add(carcasses, 0, n, notes, sums);
        double[] totals = new double[n * plan.totals().size()];
        plan.worker().totals(carcasses, 0, n, notes, totals, 0);
        double weighed = 0;
        double[] expected = new double[plan.totals().size()];
        for (int i = 0; i < n; i++) {
            if ((notes[i] & BatchWorker.REFUSED) == 0) {
                weighed += carcasses.kilograms()[i];
                for (int t = 0; t < expected.length; t++) {
                    expected[t] += totals[i * expected.length + t];
                }
            }
        }
        double outcomes = 0;
        for (int t = 0; t < expected.length; t++) {
            assertEquals(expected[t], sums.total(t).sum(), 1e-12 * weighed);
            outcomes += plan.totals().get(t) instanceof BatchTotal.OfOutcome
                    ? sums.total(t).sum()
                    : 0;
        }
        assertEquals(weighed, outcomes, 1e-12 * weighed);
        assertEquals(Outcome.values().length + 1 + plan.tree().streams().size(), expected.length);
    }

    @Example
    void no_object_is_made_for_a_carcass_whose_shares_are_its_own() {
        String byCarcass = WAYS.replace("a piece is under 3.5 kg", "the carcass is under 18 kg")
                .replace("a piece is at most 0.9 kg", "the carcass is at most 22.01 kg")
                .replace("a piece is over 0.9 kg", "the carcass is over 22.01 kg");
        String estimated = ESTIMATES.replace("a piece is under 4.2 kg", "the carcass is under 20 kg");
        for (String text : new String[] {byCarcass, estimated}) {
            BatchPlan plan = plan(text, Basis.COLD);
            int n = 4_000;
            Random random = new Random(4);
            Carcasses carcasses = new Carcasses(
                    random.doubles(n, 15, 25).toArray(),
                    plan.grades().stream()
                            .map(grade ->
                                    random.ints(n, 0, grade.values().size()).toArray())
                            .toArray(int[][]::new),
                    plan.readings().stream()
                            .map(name -> random.doubles(n, 1, 3).toArray())
                            .toArray(double[][]::new));
            byte[] notes = new byte[n];
            BatchSums sums = plan.sums();
            BatchWorker worker = plan.worker();
            worker.add(carcasses, 0, n, notes, sums);
            ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
            long before = threads.getCurrentThreadAllocatedBytes();
            worker.add(carcasses, 0, n, notes, sums);
            long made = threads.getCurrentThreadAllocatedBytes() - before;
            assertEquals(2 * n, sums.carcasses());
            assertTrue(made < n, () -> made + " bytes for " + n + " carcasses");
        }
    }
}
