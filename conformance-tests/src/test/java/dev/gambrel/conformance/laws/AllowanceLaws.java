package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.tree.Allowance;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.allowance.AllowedWarning;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.rules.TreeRules;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Example;

/** A warning that is allowed is silent and not forgotten; an error is never silenced. */
class AllowanceLaws {
    private static final String WHY = "agreed with the buyer";

    /** Every tree on file and every tree made to break a rule, as many as there are. */
    private static List<CutTree> trees() {
        List<CutTree> trees = new ArrayList<>(BrokenTrees.all().values());
        Specifications.all()
                .forEach(file -> Specifications.compile(file)
                        .value()
                        .ifPresent(compiled -> trees.add(allowing(compiled.tree(), List.of()))));
        return trees;
    }

    private static CutTree allowing(CutTree tree, List<Allowance> allowances) {
        Specification specification = tree.specification();
        return new CutTree(
                new Specification(
                        specification.title(), specification.revision(), specification.standing(), allowances),
                tree.carcass(),
                tree.species(),
                tree.streams(),
                tree.sources(),
                tree.parts(),
                tree.notes());
    }

    private static List<Diagnostic> of(Severity severity, List<Diagnostic> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == severity)
                .toList();
    }

    /** Every warning allowed where it is found. */
    private static CutTree allowingAll(CutTree tree) {
        return allowing(
                tree,
                of(Severity.WARNING, TreeRules.check(tree)).stream()
                        .map(finding -> new Allowance(
                                ((Place.InTree) finding.place()).path(),
                                finding.code().slug(),
                                WHY))
                        .distinct()
                        .toList());
    }

    @Example
    void what_is_allowed_where_it_is_found_is_no_longer_told_but_kept() {
        Set<Code> allowed = new HashSet<>();
        for (CutTree tree : trees()) {
            List<Diagnostic> before = TreeRules.check(tree);
            CutTree silent = allowingAll(tree);
            assertEquals(of(Severity.ERROR, before), TreeRules.check(silent));
            List<Diagnostic> kept = TreeRules.allowed(silent).stream()
                    .map(AllowedWarning::finding)
                    .toList();
            assertTrue(kept.containsAll(of(Severity.WARNING, before)));
            kept.forEach(finding -> allowed.add(finding.code()));
        }
        Set<Code> warnings = Stream.<Code[]>of(TreeCode.values(), BenchCode.values())
                .flatMap(Arrays::stream)
                .filter(code -> code.severity() == Severity.WARNING)
                .collect(Collectors.toSet());
        assertEquals(warnings, allowed, "every warning of the tree can be allowed");
    }

    @Example
    void a_tree_that_arrives_as_json_allows_the_same() {
        for (CutTree tree : trees()) {
            CutTree silent = allowingAll(tree);
            if (TreeRules.check(silent).isEmpty()) {
                CutTree arrived = TreeJsonReader.read(
                                "sent.json", TreeJsonWriter.write(silent).getBytes(StandardCharsets.UTF_8))
                        .orElseThrow();
                assertEquals(TreeRules.allowed(silent), TreeRules.allowed(arrived));
            }
        }
    }
}
