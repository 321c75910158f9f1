package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.json.located.FileFormat;
import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.LocatedParser;
import dev.gambrel.json.located.ObjectReader;
import dev.gambrel.json.located.Reading;
import dev.gambrel.json.located.Readings;
import dev.gambrel.json.located.Refused;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Reads a sheet in JSON as the rows that it would have as cells. What the cells mean is not asked here. */
final class SheetJson {
    static final FileFormat FORMAT = new FileFormat("gambrel weigh sheet", 1);

    private static final String SCALES = "scales";
    private static final String PARTS = "parts";
    private static final List<String> OF_A_SCALE = List.of("name", "division", "tare", "calibration");
    private static final List<String> OF_THE_CARCASS = List.of("weight", "basis", "scale");
    private static final List<HeadingLine> WORDS = List.of(
            HeadingLine.SPECIFICATION, HeadingLine.REVISION, HeadingLine.DATE, HeadingLine.LOT, HeadingLine.CUTTER);
    private static final Reading<Cell> CELL = SheetJson::cell;
    private static final int LONGEST_FIGURE = 40;

    private SheetJson() {}

    /** The rows; nothing, and why, where anything in the file has not its form. */
    static Optional<List<SheetRow>> rows(SourceText text, Consumer<Diagnostic> findings) {
        Findings found = new Findings(text);
        List<SheetRow> rows = new ArrayList<>();
        try {
            Located file = LocatedParser.parse(text, found, Limits.DEFAULT);
            rows.addAll(Readings.object(SheetJson::file).read(file, found));
        } catch (Refused refused) {
            found.add(refused.finding());
        }
        found.inOrder().forEach(findings);
        return found.isEmpty() ? Optional.of(rows) : Optional.empty();
    }

    private static List<SheetRow> file(ObjectReader in) {
        boolean isFormat = in.need("format", "\"" + FORMAT.format() + "\"", FORMAT::isFormat);
        boolean isVersion = in.need("version", String.valueOf(FORMAT.version()), FORMAT::isVersion);
        return sheet(isFormat && isVersion ? in : in.givenUp());
    }

    private static List<SheetRow> sheet(ObjectReader in) {
        List<SheetRow> rows = new ArrayList<>();
        for (HeadingLine line : WORDS) {
            boolean isSaid = in.has(line.word());
            Cell said = in.optional(line.word(), new Cell("", in.place()), CELL);
            if (isSaid) {
                rows.add(new SheetRow(said.place(), List.of(new Cell(line.word(), said.place()), said)));
            }
        }
        rows.addAll(in.list(SCALES, Readings.object(scale -> row(scale, HeadingLine.SCALE.word(), OF_A_SCALE))));
        Reading<SheetRow> carcass = Readings.object(of -> row(of, HeadingLine.CARCASS.word(), OF_THE_CARCASS));
        rows.addAll(in.optional(
                HeadingLine.CARCASS.word(),
                List.<SheetRow>of(),
                (value, found) -> List.of(carcass.read(value, found))));
        rows.addAll(in.optional(PARTS, List.<SheetRow>of(), SheetJson::parts));
        return rows;
    }

    /** The columns, then a row for each part. */
    private static List<SheetRow> parts(Located value, Findings findings) {
        Place place = findings.place(value.span());
        List<String> names = SheetColumns.NAMES;
        List<SheetRow> rows = new ArrayList<>();
        rows.add(new SheetRow(
                place, names.stream().map(name -> new Cell(name, place)).toList()));
        rows.addAll(Readings.list(Readings.object(part -> row(part, names))).read(value, findings));
        return rows;
    }

    private static SheetRow row(ObjectReader in, String word, List<String> fields) {
        List<Cell> cells = row(in, fields).cells();
        return new SheetRow(
                in.place(),
                Stream.concat(Stream.of(new Cell(word, in.place())), cells.stream())
                        .toList());
    }

    private static SheetRow row(ObjectReader in, List<String> fields) {
        Cell empty = new Cell("", in.place());
        return new SheetRow(
                in.place(),
                fields.stream().map(field -> in.optional(field, empty, CELL)).toList());
    }

    private static Cell cell(Located value, Findings findings) {
        Place place = findings.place(value.span());
        if (value instanceof Located.Text text) {
            return new Cell(text.text().strip(), place);
        } else if (value instanceof Located.Figure figure) {
            return new Cell(plain(figure, findings), place);
        }
        findings.wrongType(value, "a number, or text in quotation marks");
        return new Cell("", place);
    }

    /** A figure as it stands; one with an exponent is written out, unless that is longer than any weight. */
    private static String plain(Located.Figure figure, Findings findings) {
        boolean hasExponent =
                figure.digits().indexOf('e') >= 0 || figure.digits().indexOf('E') >= 0;
        if (!hasExponent) {
            return figure.digits();
        }
        String plain = Readings.figure(figure, findings).toPlainString();
        return plain.length() <= LONGEST_FIGURE ? plain : figure.digits();
    }
}
