package dev.gambrel.batches.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class CsvBytesTest {
    private static String text(CsvBytes bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        bytes.writeTo(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Property(tries = 1000)
    void a_figure_has_the_places_that_were_asked_for(
            @ForAll @LongRange(min = -9_999_999, max = 9_999_999) long thousandths,
            @ForAll @IntRange(min = 0, max = 6) int decimals)
            throws IOException {
        BigDecimal exact = BigDecimal.valueOf(thousandths, 3);
        CsvBytes bytes = new CsvBytes();
        bytes.figure(exact.doubleValue(), decimals);
        BigDecimal printed = new BigDecimal(text(bytes));
        assertEquals(decimals, printed.scale());
        assertEquals(0, printed.subtract(exact).abs().compareTo(BigDecimal.ONE.movePointLeft(decimals)) > 0 ? 1 : 0);
        if (decimals >= 3) {
            assertEquals(exact.setScale(decimals, RoundingMode.UNNECESSARY), printed);
        }
    }

    @Example
    void words_of_others_do_no_harm() throws IOException {
        CsvBytes bytes = new CsvBytes();
        bytes.word("=1+1");
        bytes.word("a,b");
        bytes.word("say \"no\"");
        bytes.word("bell\u0007");
        bytes.word("\u202etag");
        bytes.word("h\u00e9 \u20ac \ud83d\udc11 \ud83d");
        bytes.empty();
        bytes.endLine();
        assertEquals(
                "'=1+1,\"a,b\",\"say \"\"no\"\"\",bell\ufffd,\ufffdtag,h\u00e9 \u20ac \ud83d\udc11 \ufffd,\n",
                text(bytes));
    }

    @Property(tries = 500)
    void any_word_comes_out_as_one_cell(@ForAll String word) throws IOException {
        CsvBytes bytes = new CsvBytes();
        bytes.word(word);
        String written = text(bytes);
        Cells cells = new Cells(',', 3);
        assertEquals(true, cells.split(written.toCharArray(), 0, written.length()));
        assertEquals(1, cells.count());
    }
}
