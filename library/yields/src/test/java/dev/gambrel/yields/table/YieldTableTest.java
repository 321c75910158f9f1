package dev.gambrel.yields.table;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.portioned;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.to;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Specification;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Sheet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class YieldTableTest {
    private static final CutTree LEGS = hogget(
            pair(
                    "leg",
                    "33.0 ± 0.9",
                    portioned(
                            cut("topside", "21.0 ± 0.9", trim("fat", "4.0 ± 1.0", "mince"), loss("drip", "0.5 ± 0.1")),
                            "steak",
                            "0.18",
                            to("diced")),
                    trim("glands", "1.0", "waste"),
                    rest("mince")),
            rest("diced"));

    private static final ExpectedYields YIELDS = yields(LEGS, "22.0");

    private static final String PRINTED = """
            Marram hogget, revision 3, sheep
            Expected for a carcass of 22.00 kg, weighed cold

                                            kg, all  kg, one                 95 % range,  % of cut     % of
            part                    pieces   pieces    piece        ± kg      all pieces     above  carcass  goes to
            carcass                      1    22.00    22.00       0.000           22.00             100.00
              leg                        2     7.26     3.63       0.198    6.87 to 7.65     33.00    33.00
                topside                  2     1.53     0.76       0.077    1.37 to 1.68     21.00     6.93
                  fat                    2     0.06     0.03       0.016    0.03 to 0.09      4.00     0.28  mince
                  drip                   2     0.01     0.00       0.002    0.00 to 0.01      0.50     0.03  lost
                  topside, trimmed       2     1.46     0.73       0.076    1.31 to 1.60     95.50     6.62  product
                glands                   2     0.07     0.04  not stated      not stated      1.00     0.33  waste
                rest                     2     5.66     2.83  not stated      not stated     78.00    25.74  mince
              rest                       1    14.74    14.74       0.198  14.35 to 15.13     67.00    67.00  diced

            where it all goes, before portioning     kg        ± kg      95 % range  % of all
            all that was weighed                  22.00       0.000           22.00    100.00
              saleable                            21.92  not stated      not stated     99.64
                products                           1.46       0.076    1.31 to 1.60      6.62
                stream diced, lean 95 % visual    14.74       0.198  14.35 to 15.13     67.00
                stream mince                       5.72  not stated      not stated     26.02
              by-product                           0.00       0.000            0.00      0.00
                stream bones                       0.00       0.000            0.00      0.00
              waste                                0.07  not stated      not stated      0.33
                stream waste                       0.07  not stated      not stated      0.33
              loss                                 0.01       0.002    0.00 to 0.01      0.03

                                          kg, one  portions from  from all                         left of one
            portion                         piece      one piece    pieces     chance of at least    piece, kg  remainder to
            steak 0.18 kg, leg / topside     0.73            3.6       7.2  3: over 99 %, 4: 58 %         0.08  diced
            What portioning leaves over is counted above with the cut that it is cut from.

            All pieces are those of both sides together; one piece is one leg or one shoulder. The weight on the scale is taken
            as exact. ± is one standard deviation and the range holds the central 95 %, both of all pieces together. A spread is
            not stated where the specification gives none, or none for something that the weight depends on.
            Printed figures add up: parts are rounded by largest remainder to the printed figure of their cut, so a part may
            differ from its exact value by up to one in the last place. Totals are rounded by themselves and add up too; one may
            differ in the last place from the sum of its printed lines.
            Figures are estimates from the shares in the specification; no carcass is bound to keep to them.
            """;

    @Test
    void the_table_reads_from_the_carcass_down_and_then_adds_up() {
        assertEquals(PRINTED, YieldTable.of(YIELDS, Unit.KILOGRAM, 2).text());
    }

    @Test
    void every_line_fits_a_page_of_120_columns() {
        assertTrue(YieldTable.of(yields(Sheet.deer(), "28.40"), Unit.GRAM, 2)
                .text()
                .lines()
                .allMatch(line -> line.length() <= 120));
    }

    /** Worked scene of the design, 3. */
    @Test
    void the_printed_haunch_is_11_22_and_so_are_its_parts() {
        Map<String, String> printed =
                PartLines.of(yields(Sheet.deer(), "28.40"), new Figures(Unit.KILOGRAM, 2)).stream()
                        .collect(Collectors.toMap(
                                Line::name, line -> line.weights().all()));
        assertEquals("11.22", printed.get("haunch"));
        assertEquals(
                List.of(
                        "1.01", "1.23", "0.73", "0.79", "0.05", "1.51", "2.24", "1.57", "0.63", "0.45", "0.39", "0.06",
                        "0.56"),
                List.of(
                                "rump",
                                "shank",
                                "aitch bone",
                                "femur",
                                "patella",
                                "thick flank",
                                "topside",
                                "silverside flat",
                                "salmon cut",
                                "heel",
                                "silverskin, fat and glands",
                                "drip",
                                "rest")
                        .stream()
                        .map(printed::get)
                        .toList());
    }

    /** Worked scene of the design, 3. */
    @Test
    void three_equal_parts_of_ten_kilograms_print_ten_kilograms() {
        ExpectedYields thirds = yields(hogget(cut("a", "33.33"), cut("b", "33.33"), cut("c", "33.33")), "10");
        List<Line> lines = PartLines.of(thirds, new Figures(Unit.KILOGRAM, 2));
        assertEquals(
                List.of("10.00", "3.34", "3.33", "3.33"),
                lines.stream().map(line -> line.weights().all()).toList());
        assertEquals(
                List.of("", "33.34", "33.33", "33.33"),
                lines.stream().map(line -> line.shares().ofCutAbove()).toList());
    }

    @Test
    void a_part_with_no_share_prints_not_stated_and_never_nothing() {
        ExpectedYields yields = yields(
                hogget(cut("leg", "30 ± 1"), cut("flap", "", cut("skirt", "40"), rest("mince")), rest("mince")), "22");
        Map<String, Line> lines = PartLines.of(yields, new Figures(Unit.KILOGRAM, 2)).stream()
                .collect(Collectors.toMap(Line::path, line -> line));
        assertEquals("not stated", lines.get("flap").weights().all());
        assertEquals("not stated", lines.get("flap").shares().ofCutAbove());
        assertEquals("not stated", lines.get("flap / skirt").weights().one());
        assertEquals("40.00", lines.get("flap / skirt").shares().ofCutAbove());
        assertEquals("6.60", lines.get("leg").weights().all());
    }

    @Test
    void values_for_a_spreadsheet_have_one_header_and_a_line_for_each_part() {
        String csv = YieldTable.of(YIELDS, Unit.POUND, 1).csv();
        List<String> lines = csv.lines().toList();
        assertEquals(
                "table,name,path,goes to,level,pieces,all pieces lb,one piece lb,standard deviation of all pieces lb,"
                        + "2.5 % point lb,97.5 % point lb,% of cut above,% of carcass",
                lines.get(0));
        assertEquals("parts,leg,leg,,1,2,16.0,8.0,0.44,15.2,16.9,33.00,33.00", lines.get(2));
        assertEquals(
                "parts,\"topside, trimmed\",leg / topside,product,3,2,3.2,1.6,0.17,2.9,3.5,95.50,6.62", lines.get(6));
        assertEquals("totals,\"stream diced, lean 95 % visual\",,,2,,32.5,,0.44,31.6,33.4,,67.00", lines.get(13));
    }

    @Test
    void a_name_is_never_a_formula() {
        for (String name : List.of("=1+1", "+1", "-1", "@sum")) {
            String csv = YieldTable.of(yields(hogget(cut(name, "40"), rest("mince")), "22"), Unit.KILOGRAM, 2)
                    .csv();
            assertTrue(csv.contains("\nparts,'" + name + ",'" + name + ",product,"), csv);
        }
        assertEquals("'\t1", Csv.harmless("\t1"));
    }

    @Test
    void quotes_and_commas_stay_in_their_cell() {
        String csv = YieldTable.of(yields(hogget(cut("\"best\", end", "40"), rest("mince")), "22"), Unit.KILOGRAM, 2)
                .csv();
        assertTrue(csv.contains("\nparts,\"\"\"best\"\", end\","), csv);
    }

    @Test
    void a_title_cannot_steer_the_terminal() {
        assertEquals("\\u{1B}[31mred, revision 1", YieldTable.heading(new Specification("\u001b[31mred", 1)));
    }

    @Test
    void only_weights_to_a_few_places_are_printed() {
        assertThrows(IllegalArgumentException.class, () -> YieldTable.of(YIELDS, Unit.MILLIMETRE, 2));
        assertThrows(IllegalArgumentException.class, () -> YieldTable.of(YIELDS, Unit.KILOGRAM, 7));
    }
}
