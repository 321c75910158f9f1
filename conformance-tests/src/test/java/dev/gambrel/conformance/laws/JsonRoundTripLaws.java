package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.rules.TreeRules;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Example;

/** A specification that is sent as JSON is the same specification where it arrives. */
class JsonRoundTripLaws {
    private static Result<CutTree> sent(CutTree tree) {
        return TreeJsonReader.read("sent.json", TreeJsonWriter.write(tree).getBytes(StandardCharsets.UTF_8));
    }

    @Example
    void the_tree_that_arrives_equals_the_one_that_was_sent() {
        for (Path file : Specifications.valid()) {
            CutTree tree = Specifications.compile(file).orElseThrow().tree();
            assertEquals(tree, sent(tree).orElseThrow(), file.toString());
        }
    }

    @Example
    void the_same_is_found_in_it_at_the_same_addresses() {
        for (Path file : Specifications.valid()) {
            CutTree tree = Specifications.compile(file).orElseThrow().tree();
            List<String> found = told(sent(tree).diagnostics());
            assertEquals(told(TreeRules.check(tree)), found, file.toString());
            assertEquals(
                    told(Specifications.compile(file).diagnostics()).stream()
                            .sorted()
                            .toList(),
                    found.stream().sorted().toList());
        }
    }

    @Example
    void it_gives_the_same_table() {
        for (Path file : Specifications.valid()) {
            CutTree tree = Specifications.compile(file).orElseThrow().tree();
            assertEquals(Answers.table(tree), Answers.table(sent(tree).orElseThrow()), file.toString());
        }
    }

    private static List<String> told(List<Diagnostic> findings) {
        return findings.stream().map(JsonRoundTripLaws::told).toList();
    }

    private static String told(Diagnostic finding) {
        return finding.code().id() + " " + address(finding.place()) + " " + finding.message();
    }

    private static Place.InTree address(Place place) {
        return place instanceof Place.Written written ? written.tree() : (Place.InTree) place;
    }
}
