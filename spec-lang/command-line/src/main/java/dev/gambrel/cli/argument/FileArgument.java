package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** The file or the files that a verb reads: what stands first after the verb, without an option's name. */
public final class FileArgument {
    private FileArgument() {}

    /**
     * One file, which must be named.
     *
     * @param description what the help says of it
     * @return the argument
     */
    public static PositionalParamSpec one(String description) {
        return named(description)
                .index("0")
                .arity("1")
                .required(true)
                .type(String.class)
                .build();
    }

    /**
     * Files, of which at least one must be named.
     *
     * @param description what the help says of them
     * @return the argument
     */
    public static PositionalParamSpec several(String description) {
        return named(description)
                .arity("1..*")
                .required(true)
                .type(String[].class)
                .build();
    }

    private static PositionalParamSpec.Builder named(String description) {
        return PositionalParamSpec.builder().paramLabel("FILE").description(description);
    }

    /**
     * The file that was named, where a verb takes {@link #one}.
     *
     * @param parsed what stands on the command line
     * @return its name as written
     */
    public static String file(ParseResult parsed) {
        return parsed.matchedPositionalValue(0, "");
    }

    /**
     * The files that were named, where a verb takes {@link #several}.
     *
     * @param parsed what stands on the command line
     * @return their names as written, in their order
     */
    public static List<String> files(ParseResult parsed) {
        return List.of(parsed.matchedPositionalValue(0, new String[0]));
    }

    /**
     * Where a file is.
     *
     * @param file its name as written
     * @return its path; it need not be there
     * @throws WrongUsage if no file can have that name
     */
    public static Path path(String file) {
        try {
            return Path.of(file);
        } catch (InvalidPathException noPath) {
            throw new WrongUsage("“" + file + "” cannot be the name of a file.");
        }
    }
}
