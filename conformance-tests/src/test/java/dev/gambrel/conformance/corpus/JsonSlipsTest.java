package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.tree.CutTree;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A cut tree that arrives with a fault is refused with one message at the place of the fault. */
class JsonSlipsTest {
    @ParameterizedTest
    @EnumSource
    void a_slip_in_json_is_told_as_expected(JsonSlip slip) {
        Result<CutTree> result = slip.read();
        assertEquals(slip.codes(), Corpus.codes(result.diagnostics()));
        assertTrue(result.value().isEmpty(), "no tree");
        Corpus.hold(Corpus.report(result.diagnostics()), slip.twin());
    }

    @Test
    void without_a_slip_it_is_read() {
        assertEquals("", Corpus.report(JsonSlip.read("", "").diagnostics()));
    }

    @Test
    void what_is_no_text_is_refused() {
        byte[] oldText = "{\"name\": \"entrecôte\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(
                "G0902", Corpus.codes(TreeJsonReader.read("old.json", oldText).diagnostics()));
    }

    @Test
    void ten_thousand_faults_are_not_all_listed() {
        var found = JsonSlip.read("\"notes\": []", "\"notes\": [" + "1, ".repeat(9_999) + "1]")
                .diagnostics();
        assertTrue(Corpus.codes(found).endsWith("G0913 G0907"), Corpus.codes(found));
    }
}
