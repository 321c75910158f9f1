package dev.gambrel.json.located;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import dev.gambrel.limits.Limits;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns JSON text that anybody may have sent into values that know where they stand, within limits. */
public final class LocatedParser {
    /** No deeper than this is read, whatever the limits say, so that the stack holds. */
    private static final int DEEPEST = 250;

    /** What stands around the cuts: the file, its parts, and what the innermost cut says. */
    private static final int BRACKETS_AROUND = 10;

    private static final int VALUES_PER_NODE = 100;
    private static final int LONGEST_NUMBER = Quantity.MAX_DIGITS + Quantity.MAX_EXPONENT + 10;
    private static final Set<String> NODE_LISTS = Set.of("parts", "pieces");

    private final SourceText text;
    private final Findings findings;
    private final JsonParser parser;
    private final int nesting;
    private final int nodesAllowed;
    private int nodes;

    private LocatedParser(SourceText text, Findings findings, JsonParser parser, Limits limits) {
        this.text = text;
        this.findings = findings;
        this.parser = parser;
        this.nesting = nesting(limits);
        this.nodesAllowed = limits.nodes();
    }

    /**
     * Reads a text. Figures are kept as written, and a field that is given twice is told.
     *
     * @param text the whole text
     * @param findings where faults are told that reading can go on after
     * @param limits how much is read; brackets stand twice as deep as cuts may, and never more than {@value #DEEPEST}
     * @return the outermost value
     * @throws Refused at a fault that reading cannot go on after
     */
    public static Located parse(SourceText text, Findings findings, Limits limits) throws Refused {
        Utf8.checkLength(text, limits);
        // From one array: where a parser refills its buffer within a field, its offsets cannot be relied on.
        try (JsonParser parser = factory(limits).createParser(text.text().toCharArray())) {
            return new LocatedParser(text, findings, parser, limits).document(limits);
        } catch (IOException e) {
            throw new IllegalStateException("text in memory cannot be closed", e);
        }
    }

    private static JsonFactory factory(Limits limits) {
        StreamReadConstraints constraints = StreamReadConstraints.builder()
                .maxDocumentLength(limits.textBytes())
                .maxStringLength(limits.textBytes())
                .maxNestingDepth(nesting(limits) + 1)
                .maxNameLength(TradeName.MAX_LENGTH)
                .maxNumberLength(LONGEST_NUMBER)
                .maxTokenCount(values(limits))
                .build();
        return JsonFactory.builder()
                .streamReadConstraints(constraints)
                .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
                .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
                .build();
    }

    /** A cut takes two brackets, its own and its parts'; so a tree as deep as the limit allows can be read back. */
    private static int nesting(Limits limits) {
        return Math.min(2 * Math.min(limits.nesting(), DEEPEST) + BRACKETS_AROUND, DEEPEST);
    }

    private static long values(Limits limits) {
        return (long) VALUES_PER_NODE * limits.nodes();
    }

    private Located document(Limits limits) throws Refused {
        Located.Pointer root = new Located.Pointer.Root();
        try {
            if (parser.nextToken() == null) {
                throw notJson(root);
            }
            Located value = value(root, 0, false);
            if (parser.nextToken() != null) {
                throw notJson(root);
            }
            return value;
        } catch (StreamConstraintsException e) {
            throw new Refused(findings.at(JsonCode.PAST_LIMIT, here(), spanHere())
                    .with("nameLength", TradeName.MAX_LENGTH)
                    .with("digits", Quantity.MAX_DIGITS)
                    .with("values", values(limits)));
        } catch (IOException e) {
            throw notJson(here());
        }
    }

    private Located value(Located.Pointer pointer, int depth, boolean nodeList) throws IOException, Refused {
        int start = offset();
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(pointer, start, depth + 1);
            case START_ARRAY -> list(pointer, start, depth + 1, nodeList);
            case VALUE_STRING -> {
                String words = parser.getText();
                yield new Located.Text(pointer, new Span(start, closingQuote(start)), words);
            }
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                String digits = parser.getText();
                yield new Located.Figure(pointer, new Span(start, start + digits.length()), digits);
            }
            default -> {
                String word = parser.getText();
                yield new Located.Literal(pointer, new Span(start, start + word.length()), word);
            }
        };
    }

    private Located object(Located.Pointer pointer, int start, int depth) throws IOException, Refused {
        checkDepth(pointer, start, depth);
        Map<String, Located.Field> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            int nameStart = offset();
            Span nameSpan = new Span(nameStart, closingQuote(nameStart));
            parser.nextToken();
            Located value = value(pointer.then(name), depth, NODE_LISTS.contains(name));
            Located.Field first = fields.putIfAbsent(name, new Located.Field(nameSpan, value));
            if (first != null) {
                findings.add(findings.at(JsonCode.DUPLICATE_FIELD, value.pointer(), nameSpan)
                        .related(findings.place(first.name()), "given here first")
                        .help("Keep the one that is meant and remove the other."));
            }
        }
        return new Located.Fields(pointer, new Span(start, offset() + 1), fields);
    }

    private Located list(Located.Pointer pointer, int start, int depth, boolean ofNodes) throws IOException, Refused {
        checkDepth(pointer, start, depth);
        List<Located> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            Located.Pointer item = pointer.then(items.size());
            if (ofNodes && ++nodes > nodesAllowed) {
                throw new Refused(findings.at(JsonCode.TOO_MANY_PARTS, item, new Span(offset(), offset() + 1))
                        .with("allowed", nodesAllowed)
                        .help("Split it into several files."));
            }
            items.add(value(item, depth, false));
        }
        return new Located.Items(pointer, new Span(start, offset() + 1), items);
    }

    private void checkDepth(Located.Pointer pointer, int start, int depth) throws Refused {
        if (depth > nesting) {
            throw new Refused(findings.at(JsonCode.NESTED_TOO_DEEP, pointer, new Span(start, start + 1))
                    .with("allowed", nesting)
                    .help("Ask the sender for a file that is divided less finely."));
        }
    }

    private Refused notJson(Located.Pointer pointer) {
        return new Refused(findings.at(JsonCode.NOT_JSON, pointer, spanHere())
                .help("Ask the sender for the file again; it may have been cut short or changed on the way."));
    }

    private Located.Pointer here() {
        Located.Pointer pointer = new Located.Pointer.Root();
        String path = parser.getParsingContext().pathAsPointer().toString();
        for (String step : path.isEmpty() ? new String[0] : path.substring(1).split("/", -1)) {
            pointer = pointer.then(step.replace("~1", "/").replace("~0", "~"));
        }
        return pointer;
    }

    private Span spanHere() {
        int length = text.text().length();
        int at = (int) Math.max(0, Math.min(length, parser.currentLocation().getCharOffset()));
        return new Span(at, Math.min(length, at + 1));
    }

    private int offset() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    private int closingQuote(int openingQuote) {
        String all = text.text();
        int at = openingQuote + 1;
        while (all.charAt(at) != '"') {
            at += all.charAt(at) == '\\' ? 2 : 1;
        }
        return at + 1;
    }
}
