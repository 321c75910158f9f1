package dev.gambrel.benchmarks;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.StringJoiner;
import java.util.function.IntFunction;

/** The same figures asked of a column store in SQL, the tree written out as one expression for each line. */
final class DuckDbTotals implements AutoCloseable {
    private final Connection connection;
    private final Statement statement;
    private final FlatSheet sheet;

    /** Makes the table of carcasses, in memory, for so many threads. */
    DuckDbTotals(FlatSheet sheet, int carcasses, int threads) throws SQLException {
        this.sheet = sheet;
        connection = DriverManager.getConnection("jdbc:duckdb:");
        statement = connection.createStatement();
        statement.execute("SET threads = " + threads);
        statement.execute(
                "CREATE TABLE carcasses AS SELECT 20 + 4 * " + part(DrawnCarcasses.STEP_OF_WEIGHT) + " AS w, 3 + 9 * "
                        + part(DrawnCarcasses.STEP_OF_FAT) + " AS fat FROM range(" + carcasses + ") AS drawn(i)");
    }

    private static String part(int step) {
        return "((i * " + step + ") % " + DrawnCarcasses.MODULUS + ")::DOUBLE / " + DrawnCarcasses.MODULUS;
    }

    /** The total of each line. */
    double[] totals() throws SQLException {
        try (ResultSet row =
                statement.executeQuery("SELECT " + each(v -> "sum(" + fixed(v) + ")") + " FROM carcasses")) {
            return read(row);
        }
    }

    /** The total of each line where three joints follow from the back fat. */
    double[] estimatedTotals() throws SQLException {
        try (ResultSet row =
                statement.executeQuery("SELECT " + each(v -> "sum(" + estimated(v) + ")") + " FROM " + divided())) {
            return read(row);
        }
    }

    /** Keeps the weight of each line of each carcass in a table. */
    void keep() throws SQLException {
        statement.execute(
                "CREATE OR REPLACE TABLE weights AS SELECT " + each(v -> fixed(v) + " AS w" + v) + " FROM carcasses");
    }

    private double[] read(ResultSet row) throws SQLException {
        row.next();
        double[] totals = new double[sheet.size()];
        for (int v = 0; v < totals.length; v++) {
            totals[v] = row.getDouble(v + 1);
        }
        return totals;
    }

    private String each(IntFunction<String> expression) {
        StringJoiner joined = new StringJoiner(", ");
        for (int v = 0; v < sheet.size(); v++) {
            joined.add(expression.apply(v));
        }
        return joined.toString();
    }

    private String fixed(int v) {
        return "w * " + sheet.ofCarcass()[v] + "::DOUBLE";
    }

    private String estimated(int v) {
        int part = 0;
        while (part < sheet.top().length - 1 && v >= sheet.top()[part + 1]) {
            part++;
        }
        return v == 0 ? "w" : "p" + part + " * " + sheet.ofTop()[v] + "::DOUBLE";
    }

    private String divided() {
        StringJoiner parts = new StringJoiner(", ", "(SELECT w, ", " FROM carcasses)");
        double stated = 0;
        for (int t = 0; t < sheet.top().length - 1; t++) {
            String share =
                    switch (t) {
                        case EstimatedSheet.LEG -> "(0.215 - 0.0015 * fat)";
                        case EstimatedSheet.LOIN -> "(0.188 + 0.0010 * fat)";
                        case EstimatedSheet.SHOULDER -> "(0.200 - 0.0005 * fat)";
                        default -> sheet.ofCarcass()[sheet.top()[t]] + "::DOUBLE";
                    };
            boolean isStated = !share.startsWith("(") && t != EstimatedSheet.REST;
            stated += isStated ? sheet.ofCarcass()[sheet.top()[t]] : 0;
            if (t != EstimatedSheet.REST) {
                parts.add("w * " + share + " AS p" + t);
            }
        }
        return parts.add("w * (1 - 0.603 + 0.0010 * fat - " + stated + ") AS p" + EstimatedSheet.REST)
                .toString();
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
