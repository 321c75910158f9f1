package dev.gambrel.cli.file;

import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.reports.png.PngImage;
import dev.gambrel.reports.svg.Picture;
import java.nio.charset.StandardCharsets;

/** A picture written as the name of its file asks for: as a drawing or as an image. */
public final class PictureFile {
    /** Twice as fine as a screen. */
    private static final int DOTS_PER_PIXEL = 2;

    private PictureFile() {}

    /**
     * Writes a picture whole or not at all, and says so.
     *
     * @param file which file was asked for
     * @param picture what shall be in it
     * @param what it is, for example "The picture of the cut tree"
     * @param terminal where it is said
     * @return how the program ends as far as this goes
     */
    public static ExitStatus write(AskedFile file, Picture picture, String what, Terminal terminal) {
        if (!file.endsWith(".png")) {
            return file.write(picture.svg().getBytes(StandardCharsets.UTF_8), what, terminal);
        }
        System.setProperty("java.awt.headless", "true");
        Result<PngImage> image = PngImage.of(picture, DOTS_PER_PIXEL * (int) picture.width(), file.name());
        FindingsPrinter.print(image.diagnostics(), terminal.err(), terminal.colour(), false);
        return image.value().map(png -> file.write(png.bytes(), what, terminal)).orElse(ExitStatus.COULD_NOT);
    }
}
