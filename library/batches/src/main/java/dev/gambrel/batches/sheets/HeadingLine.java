package dev.gambrel.batches.sheets;

import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The lines that a heading may have, each by its first word. */
enum HeadingLine {
    SPECIFICATION(
            "of which specification it is",
            "specification,Marram house hogget",
            "\"specification\": \"Marram house hogget\""),
    REVISION("of which revision it is", "revision,3", "\"revision\": 3"),
    DATE("the date", "date,2026-03-02", "\"date\": \"2026-03-02\""),
    LOT("the lot", "lot,41", "\"lot\": \"41\""),
    SCALE(
            "on what scale was weighed",
            "scale,bench,5 g,1 g",
            "\"scales\": [{\"name\": \"bench\", \"division\": \"5 g\", \"tare\": \"1 g\"}]"),
    CUTTER("the cutter", "cutter,first block", "\"cutter\": \"first block\""),
    CARCASS(
            "what the carcass weighed",
            "carcass,22.40 kg,cold",
            "\"carcass\": {\"weight\": \"22.40 kg\", \"basis\": \"cold\"}");

    private final String what;
    private final String example;
    private final String json;

    HeadingLine(String what, String example, String json) {
        this.what = what;
        this.example = example;
        this.json = json;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it says, as part of a sentence. */
    String what() {
        return what;
    }

    String example() {
        return example;
    }

    String json() {
        return json;
    }

    boolean isNeeded() {
        return this == SPECIFICATION || this == REVISION || this == SCALE || this == CARCASS;
    }

    static Optional<HeadingLine> of(String word) {
        return Arrays.stream(values())
                .filter(line -> line.word().equalsIgnoreCase(word))
                .findFirst();
    }

    /** What to write in place of a word that is none. */
    static String advice(String word) {
        return NearestName.of(
                        word,
                        Arrays.stream(values()).map(l -> TradeName.of(l.word())).toList())
                .map(near -> "Is “" + near + "” meant?")
                .orElse("There are: "
                        + Arrays.stream(values()).map(HeadingLine::word).collect(Collectors.joining(", "))
                        + "; the table begins with “part”.");
    }
}
