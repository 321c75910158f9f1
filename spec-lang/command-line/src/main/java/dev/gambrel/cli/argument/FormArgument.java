package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * In which form a verb prints, on the command line: {@code --as json}.
 *
 * @param forms those that the verb has, the one first that is taken if none is asked for
 */
public record FormArgument(List<Form> forms) {
    /** For people or for programs. */
    public static final FormArgument TEXT_OR_JSON = new FormArgument(List.of(Form.TEXT, Form.JSON));

    /** For people, for spreadsheets or for programs. */
    public static final FormArgument TEXT_CSV_OR_JSON = new FormArgument(List.of(Form.TEXT, Form.CSV, Form.JSON));

    private static final String NAME = "--as";

    /** A form of output. */
    public enum Form {
        /** To be read. */
        TEXT,
        /** Comma-separated values. */
        CSV,
        /** JSON. */
        JSON;

        private String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Copies the list. */
    public FormArgument {
        forms = List.copyOf(forms);
    }

    /**
     * Takes the form.
     *
     * @return the option
     */
    public OptionSpec option() {
        return option("");
    }

    /**
     * Takes the form.
     *
     * @param what is printed in it, told before the forms; empty if that is plain
     * @return the option
     */
    public OptionSpec option(String what) {
        return OptionSpec.builder(NAME)
                .paramLabel("FORM")
                .type(String.class)
                .description(what + words(" or ") + "; " + forms.get(0).word() + " if not said.")
                .build();
    }

    /**
     * The form that was asked for.
     *
     * @param parsed what stands on the command line
     * @return one of the forms
     * @throws WrongUsage if it is another word
     */
    public Form form(ParseResult parsed) {
        String word = parsed.matchedOptionValue(NAME, forms.get(0).word());
        return forms.stream()
                .filter(form -> form.word().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() ->
                        new WrongUsage("“" + word + "” is not a form of output; there are " + words(" and ") + "."));
    }

    private String words(String beforeLast) {
        int last = forms.size() - 1;
        return forms.subList(0, last).stream().map(Form::word).collect(Collectors.joining(", "))
                + beforeLast
                + forms.get(last).word();
    }
}
