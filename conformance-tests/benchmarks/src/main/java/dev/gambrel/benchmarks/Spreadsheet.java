package dev.gambrel.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.poi.hssf.usermodel.HSSFFormulaEvaluator;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;

/** The sheet as a workbook: one row, the carcass in its first cell, a formula for each line beside it. */
final class Spreadsheet implements AutoCloseable {
    private final HSSFWorkbook workbook = new HSSFWorkbook();
    private final HSSFRow row;
    private final HSSFFormulaEvaluator evaluator;
    private final int lines;

    Spreadsheet(FlatSheet sheet) {
        HSSFSheet page = workbook.createSheet();
        row = page.createRow(0);
        row.createCell(0).setCellValue(0);
        lines = sheet.size();
        for (int v = 0; v < lines; v++) {
            row.createCell(v + 1).setCellFormula("$A$1*" + sheet.ofCarcass()[v]);
        }
        evaluator = new HSSFFormulaEvaluator(workbook);
    }

    /** Adds each line's weight of one carcass. */
    void totals(double kilograms, double[] totals) {
        row.getCell(0).setCellValue(kilograms);
        evaluator.notifyUpdateCell(row.getCell(0));
        for (int v = 0; v < lines; v++) {
            totals[v] += evaluator.evaluate(row.getCell(v + 1)).getNumberValue();
        }
    }

    @Override
    public void close() {
        try {
            workbook.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
