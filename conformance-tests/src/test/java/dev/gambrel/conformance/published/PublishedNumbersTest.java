package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.references.item.Animal;
import dev.gambrel.references.item.Item;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.references.item.Numbers;
import dev.gambrel.references.item.PublishedItems;
import dev.gambrel.references.item.Reference;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.ranges.AustralianGuide;
import dev.gambrel.references.ranges.Bounds;
import dev.gambrel.references.ranges.PublishedRanges;
import dev.gambrel.references.unece.Field;
import dev.gambrel.references.unece.FieldValue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers, fields and ranges as printed; each table names its source in its first line. */
class PublishedNumbersTest {
    private static final Path FOLDER = Path.of("src/test/resources/references");

    private static List<String[]> table(String name) {
        try (Stream<String> lines = Files.lines(FOLDER.resolve(name))) {
            return lines.filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(";"))
                    .toList();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    static List<String[]> cuts() {
        return table("beef-cuts.csv");
    }

    static List<String[]> ranges() {
        return table("imps-ranges.csv");
    }

    static List<String[]> guide() {
        return table("australian-guide.csv");
    }

    @Test
    void every_digit_of_the_beef_code_means_what_the_standard_says_and_no_other_means_anything() {
        TreeSet<String> printed = new TreeSet<>();
        table("beef-fields.csv").forEach(row -> printed.add(row[0] + " " + row[1] + " " + row[2]));
        TreeSet<String> held = new TreeSet<>();
        for (Field field : Field.values()) {
            for (FieldValue value : field.choices()) {
                held.add(field.position() + " " + value.digit() + " "
                        + value.words().replaceFirst(": .*", ""));
            }
        }
        assertEquals(printed, held);
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void a_beef_cut_has_its_name_and_its_bone(String from, String to, String name, String bone) {
        Meaning meaning = PublishedItems.lookUp(new Reference(Scheme.UNECE, from, "2007"), Animal.BEEF);
        Item item = assertInstanceOf(Meaning.Known.class, meaning).item();
        assertEquals(new Numbers(from, to), item.numbers());
        assertEquals(name, item.name());
        assertEquals(bone, item.bone().words());
    }

    @ParameterizedTest
    @MethodSource("ranges")
    void an_item_has_the_weight_ranges_of_the_print(String number, String edition, String ranges) {
        String held = PublishedRanges.of(new Reference(Scheme.IMPS, number, edition)).get(0).ranges().stream()
                .map(range -> written(range.bounds()))
                .collect(Collectors.joining(" "));
        assertEquals(ranges, held);
    }

    private static String written(Bounds bounds) {
        return bounds.toString().replace(" lb", "").replace(" and up", "-up").replace(" to ", "-");
    }

    /** Regression only: the share is of both sides, so a piece of one side has half of it; a whole neck has all. */
    @ParameterizedTest
    @MethodSource("guide")
    void a_lamb_piece_weighs_about_its_share_of_the_carcass(
            String number, String share, String carcassFrom, String carcassTo, String from, String to) {
        Quantity carcass = Quantity.of(carcassFrom, Unit.KILOGRAM);
        Bounds.Between piece = (Bounds.Between)
                AustralianGuide.ofCarcass(number, carcass).orElseThrow().bounds();
        assertEquals(new Bounds.Between(Quantity.of(from, Unit.KILOGRAM), Quantity.of(to, Unit.KILOGRAM)), piece);
        boolean doesNotFit = number.equals("4930") && carcassFrom.equals("18");
        BigDecimal sides = new BigDecimal(number.equals("5020") ? "100" : "200");
        BigDecimal heaviest =
                new BigDecimal(share).multiply(new BigDecimal(carcassTo)).divide(sides);
        BigDecimal lightest =
                new BigDecimal(share).multiply(new BigDecimal(carcassFrom)).divide(sides);
        BigDecimal near = new BigDecimal("0.065");
        boolean fits = heaviest.subtract(new BigDecimal(to)).abs().compareTo(near) <= 0
                && lightest.subtract(new BigDecimal(from)).abs().compareTo(near) <= 0;
        assertTrue(fits != doesNotFit, number + " of " + carcass);
    }
}
