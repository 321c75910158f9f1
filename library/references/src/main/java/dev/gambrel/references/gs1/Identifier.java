package dev.gambrel.references.gs1;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A kind of value on a label.
 *
 * @param pattern two to four digits; an n stands for any digit up to {@code highest}
 * @param title as GS1 prints it
 * @param form what its values look like
 * @param highest the largest digit for n; 0 where there is none
 * @param partners for each list one of its identifiers must stand beside it
 * @param excluded what must not stand beside it; others of its own pattern must not either
 */
public record Identifier(
        String pattern, String title, Form form, int highest, List<List<String>> partners, List<String> excluded) {
    private static final String TABLE = """
            00   | SSCC                    | SSCC          | 0 |                       |
            01   | GTIN                    | GTIN          | 0 |                       | 02,37
            02   | CONTENT                 | GTIN          | 0 | 37                    |
            10   | BATCH/LOT               | TEXT_20       | 0 | 01,02,03,8006,8026    |
            11   | PROD DATE               | DATE          | 0 | 01,02,03,8006,8026    |
            13   | PACK DATE               | DATE          | 0 | 01,02,03,8006,8026    |
            15   | BEST BEFORE             | DATE          | 0 | 01,02,03,8006,8026    |
            16   | SELL BY                 | DATE          | 0 | 01,02,03,8006,8026    |
            17   | USE BY                  | DATE          | 0 | 01,02,03,255,8006,8026 |
            21   | SERIAL                  | TEXT_20       | 0 | 01,03,8006            |
            251  | REF. TO SOURCE          | TEXT_30       | 0 | 01,03,8006            |
            30   | VAR. COUNT              | COUNT         | 0 | 01,02                 |
            310n | NET WEIGHT (kg)         | MEASURE       | 5 | 01,02                 |
            320n | NET WEIGHT (lb)         | MEASURE       | 5 | 01,02                 |
            330n | GROSS WEIGHT (kg)       | MEASURE       | 5 | 00,01                 |
            340n | GROSS WEIGHT (lb)       | MEASURE       | 5 | 00,01                 |
            37   | COUNT                   | COUNT         | 0 | 00;02,8026            |
            392n | PRICE                   | AMOUNT        | 9 | 01;30,310n,320n       |
            422  | ORIGIN                  | COUNTRY       | 0 | 01,02,03,8006,8026    | 426
            423  | COUNTRY - INITIAL PROCESS | COUNTRIES   | 0 | 01,02,03              | 426
            424  | COUNTRY - PROCESS       | COUNTRY       | 0 | 01,02,03              | 426
            425  | COUNTRY - DISASSEMBLY   | COUNTRIES     | 0 | 01,02,03              | 426
            426  | COUNTRY - FULL PROCESS  | COUNTRY       | 0 | 01,02,03              |
            7002 | MEAT CUT                | TEXT_30       | 0 | 01,02                 |
            7003 | EXPIRY TIME             | DATE_AND_TIME | 0 | 01,02,03              |
            7006 | FIRST FREEZE DATE       | DATE_OPEN     | 0 | 01,02                 |
            7007 | HARVEST DATE            | DATES         | 0 | 01,02                 |
            703n | PROCESSOR               | PROCESSOR     | 9 | 01,02,03              |
            """;

    private static final List<Identifier> ALL =
            TABLE.lines().map(line -> read(line.split(" *\\| *", -1))).toList();

    /** Copies the lists. */
    public Identifier {
        partners = partners.stream().map(List::copyOf).toList();
        excluded = List.copyOf(excluded);
    }

    private static Identifier read(String... cells) {
        List<List<String>> partners = new ArrayList<>();
        for (String group : cells[4].split(";")) {
            partners.add(names(group));
        }
        partners.removeIf(List::isEmpty);
        return new Identifier(
                cells[0], cells[1], Form.valueOf(cells[2]), Integer.parseInt(cells[3]), partners, names(cells[5]));
    }

    private static List<String> names(String cell) {
        return cell.isBlank() ? List.of() : List.of(cell.strip().split(","));
    }

    /**
     * Every one that is known here.
     *
     * @return by their digits
     */
    public static List<Identifier> all() {
        return ALL;
    }

    /**
     * The identifier that some digits are.
     *
     * @param digits two to four digits
     * @return the identifier, or nothing if it is not known here
     */
    public static Optional<Identifier> of(String digits) {
        return ALL.stream().filter(identifier -> identifier.isWritten(digits)).findFirst();
    }

    /**
     * Whether digits are this one.
     *
     * @param digits any text
     * @return true for example for 3103 where the pattern is 310n
     */
    public boolean isWritten(String digits) {
        if (!isFamily()) {
            return pattern.equals(digits);
        }
        int last = pattern.length() - 1;
        return digits.length() == pattern.length()
                && digits.startsWith(pattern.substring(0, last))
                && digits.charAt(last) >= '0'
                && digits.charAt(last) <= '0' + highest;
    }

    /**
     * Whether its last digit says how many decimals the value has, or which of several it is.
     *
     * @return true if the pattern ends with n
     */
    public boolean isFamily() {
        return pattern.endsWith("n");
    }
}
