package dev.gambrel.cli.blend;

import dev.gambrel.blends.Price;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is written after an option, read by a form; what does not fit the form is told with an example. */
record Written(String option, String words, String example) {
    /** A figure with a point. */
    static final String NUMBER = "([0-9]{1,12}(?:\\.[0-9]{1,12})?)";

    /** How lean is judged. */
    static final String JUDGED = "(visual|chemical)";

    Matcher by(Pattern form) {
        Matcher matcher = form.matcher(words.strip());
        if (!matcher.matches()) {
            throw isUnjudged(form) ? unjudged() : wrong();
        }
        return matcher;
    }

    /** Whether nothing but how lean is judged is missing, where a form asks for it. */
    private boolean isUnjudged(Pattern form) {
        return form.pattern().contains(JUDGED)
                && form.matcher(words.strip().replaceFirst("%(?=[^%]*$)", "% visual"))
                        .matches();
    }

    private WrongUsage unjudged() {
        return new WrongUsage(
                "“" + words + "” after " + option + " does not say how lean is judged; write visual, by eye, or"
                        + " chemical, by analysis, such as \"" + example + "\".");
    }

    double kilograms(String amount, String symbol) {
        Unit unit = Unit.of(symbol)
                .filter(each -> each.dimension() == Dimension.WEIGHT)
                .orElseThrow(this::wrong);
        double kilograms = Double.parseDouble(amount) * unit.factor().doubleValue();
        if (!(kilograms > 0)) {
            throw wrong();
        }
        return kilograms;
    }

    Price price(String money, String symbol) {
        return Price.of(Double.parseDouble(money) / kilograms("1", symbol));
    }

    double percent(String amount) {
        double percent = Double.parseDouble(amount);
        if (percent > 100) {
            throw wrong();
        }
        return percent;
    }

    TradeName name(String text) {
        if (!TradeName.isAcceptable(text)) {
            throw wrong();
        }
        return TradeName.of(text);
    }

    List<TradeName> names(String text) {
        List<TradeName> names = new ArrayList<>();
        for (String each : text.split("\\s+and\\s+", -1)) {
            names.add(name(each));
        }
        return names;
    }

    static Judged judged(String word) {
        return Judged.valueOf(word.toUpperCase(Locale.ROOT));
    }

    WrongUsage wrong() {
        return new WrongUsage(
                "“" + words + "” cannot be read after " + option + "; write it such as \"" + example + "\".");
    }
}
