package dev.gambrel.conformance.corpus;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** A cut tree in JSON as it should be sent, and what may be wrong with it when it arrives. */
enum JsonSlip {
    /** A comma was lost. */
    NOT_JSON("G0901", "\"anything\",", "\"anything\""),
    /** More than a small limit allows. */
    TOO_LONG("G0903", new Limits(100, 100, 50, 8, 20_000, 50_000, 50), text -> text),
    /** 212 brackets inside one another: two for each of a hundred cuts, ten around, and too many. */
    NESTED("G0904", text -> text.replace("\"notes\": []", "\"notes\": " + "[".repeat(211) + "]".repeat(211))),
    /** More parts than a small limit allows. */
    TOO_MANY_PARTS("G0905", new Limits(1 << 20, 100, 50, 8, 20_000, 1, 50), text -> text),
    /** A field's name without end. */
    LONG_FIELD("G0906", text -> text.replace("\"notes\"", "\"" + "n".repeat(60_000) + "\"")),
    /** A price list. */
    ANOTHER_FORMAT("G0908", "gambrel cut tree", "price list"),
    /** From a newer program. */
    NEWER_VERSION("G0909", "\"version\": 1", "\"version\": 2"),
    /** Two names. */
    TWO_NAMES("G0910", "\"name\": \"leg\"", "\"name\": \"leg\", \"name\": \"shank\""),
    /** A name misspelt. */
    FIELD_MISSPELT("G0911", "\"notes\"", "\"nots\""),
    /** No name. */
    FIELD_MISSING("G0912", "\"name\": \"leg\",", ""),
    /** A number for a name. */
    NUMBER_FOR_A_NAME("G0913", "\"name\": \"leg\"", "\"name\": 12"),
    /** Salable. */
    WORD_MISSPELT("G0914", "\"saleable\"", "\"salable\""),
    /** Stone. */
    UNKNOWN_UNIT("G0915", "\"unit\": \"kg\"", "\"unit\": \"stone\""),
    /** A share in kilograms. */
    SHARE_IN_KILOGRAMS("G0916", "\"unit\": \"%\"", "\"unit\": \"kg\""),
    /** A slash in a name. */
    SLASH_IN_A_NAME("G0917", "\"leg\"", "\"leg/gigot\""),
    /** More digits than are kept. */
    NUMBER_TOO_LONG("G0918", "\"mean\": 34", "\"mean\": 33." + "3".repeat(40)),
    /** A rule of the tree: nothing takes what the leg leaves. */
    NO_REST(
            "G0501",
            "\"kind\": \"rest\"",
            "\"kind\": \"cut\", \"name\": \"neck\", \"share\": {\"mean\": 4, \"unit\": \"%\"}"),
    /** A rule of the tree: the rest goes to a stream that nobody declares. */
    UNKNOWN_STREAM("G0302", "\"stream\": \"mince\"", "\"stream\": \"dice\"");

    private static final String RIGHT = """
            {
              "format": "gambrel cut tree",
              "version": 1,
              "specification": {"title": "anything", "revision": 1},
              "carcass": {"basis": "cold", "band": {"low": 12, "high": 16, "unit": "kg"}},
              "species": {"name": "goat"},
              "streams": [{"name": "mince", "kind": "saleable"}],
              "parts": [
                {"kind": "cut", "name": "leg", "share": {"mean": 34, "unit": "%"}, "home": {"kind": "product"}},
                {"kind": "rest", "home": {"kind": "stream", "stream": "mince"}}
              ],
              "notes": []
            }
            """;

    private final String codes;
    private final Limits limits;
    private final UnaryOperator<String> slip;

    JsonSlip(String codes, String right, String wrong) {
        this(codes, text -> text.replace(right, wrong));
    }

    JsonSlip(String codes, UnaryOperator<String> slip) {
        this(codes, Limits.DEFAULT, slip);
    }

    JsonSlip(String codes, Limits limits, UnaryOperator<String> slip) {
        this.codes = codes;
        this.limits = limits;
        this.slip = slip;
    }

    String codes() {
        return codes;
    }

    Path twin() {
        return Corpus.folder("invalid-json").resolve(name().toLowerCase(Locale.ROOT) + ".expected");
    }

    Result<CutTree> read() {
        return TreeJsonReader.read("goat.json", slip.apply(RIGHT).getBytes(StandardCharsets.UTF_8), limits);
    }

    /** The right one with a change. */
    static Result<CutTree> read(String right, String wrong) {
        return TreeJsonReader.read("goat.json", RIGHT.replace(right, wrong).getBytes(StandardCharsets.UTF_8));
    }
}
