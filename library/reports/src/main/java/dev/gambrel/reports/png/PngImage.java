package dev.gambrel.reports.png;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.reports.svg.Picture;
import java.awt.AWTError;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A picture as a PNG image on white. Words are set in a font of the machine, so that two machines may draw them differently. Immutable. */
public final class PngImage {
    /** How many dots an image may have: 160 MB while it is drawn. */
    public static final long MOST_DOTS = 40_000_000;

    private static final long MILLION = 1_000_000;

    private final byte[] bytes;

    private PngImage(byte[] bytes) {
        this.bytes = bytes;
    }

    /**
     * Draws a picture.
     *
     * @param picture the picture
     * @param width of the image in dots, 1 or more; its height follows
     * @param name what the image is called in findings
     * @return the image; or that it is too large, or that there are no fonts
     * @throws IllegalArgumentException if the width is less than 1
     */
    public static Result<PngImage> of(Picture picture, int width, String name) {
        if (width < 1) {
            throw new IllegalArgumentException("an image " + width + " dots wide");
        }
        long height = Math.max(1, (long) Math.ceil(width * picture.height() / picture.width()));
        Place place = new Place.InFile(name);
        if (width * height > MOST_DOTS) {
            return Result.failed(List.of(Diagnostic.of(ImageCode.IMAGE_TOO_LARGE, place)
                    .with("width", width)
                    .with("height", height)
                    .with("dots", width * height / MILLION)
                    .with("limit", MOST_DOTS / MILLION)
                    .help("Let the name of the file end in .svg: a drawing may be of any size.")));
        } else if (!canWrite()) {
            return Result.failed(List.of(Diagnostic.of(ImageCode.NO_FONTS, place)
                    .with("width", width)
                    .with("height", height)
                    .help("Install fonts and fontconfig, or let the name of the file end in .svg.")));
        }
        return Result.of(new PngImage(drawn(picture, width, (int) height)), List.of());
    }

    /** The JDK says by errors of its own that there are no fonts, or none of its parts that would find them. */
    private static boolean canWrite() {
        try {
            return GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames().length > 0;
        } catch (InternalError | LinkageError | AWTError nothingToWriteWith) {
            return false;
        }
    }

    private static byte[] drawn(Picture picture, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setColor(Color.WHITE);
            graphics.fillRect(0, 0, width, height);
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            document(picture).render((Component) null, graphics, new ViewBox(0, 0, width, height));
        } finally {
            graphics.dispose();
        }
        return png(image);
    }

    /** How much is drawn is limited by how large the image is. */
    private static SVGDocument document(Picture picture) {
        SVGDocument document = new SVGLoader()
                .load(
                        new ByteArrayInputStream(picture.svg().getBytes(StandardCharsets.UTF_8)),
                        null,
                        LoaderContext.builder()
                                .documentLimits(new DocumentLimits(
                                        DocumentLimits.DEFAULT_MAX_NESTING_DEPTH,
                                        DocumentLimits.DEFAULT_MAX_USE_NESTING_DEPTH,
                                        Integer.MAX_VALUE))
                                .build());
        if (document == null) {
            throw new IllegalStateException("a picture of our own cannot be read");
        }
        return document;
    }

    /** In memory: left to itself the JDK would write a file in between. */
    private static byte[] png(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream memory = new MemoryCacheImageOutputStream(out)) {
            ImageIO.write(image, "png", memory);
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
        return out.toByteArray();
    }

    /**
     * The image as a file.
     *
     * @return a copy of its bytes
     */
    public byte[] bytes() {
        return bytes.clone();
    }
}
