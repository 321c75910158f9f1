package dev.gambrel.cli.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.cli.Run;
import dev.gambrel.cli.terminal.ExitStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {
    /** A rest and legs that weigh what the carcass weighs. */
    private static final String SHEET = """
            specification,Marram hogget
            revision,3
            scale,bench,5 g,1 g
            carcass,22.000 kg,cold
            part,pieces,gross,tare,unit
            leg,pair,7.600,0.340,kg
            rest,all,14.740,0,kg
            """;

    @TempDir
    Path folder;

    private Run balance(String... more) {
        String spec = Run.write(folder, "hogget.cuts", Run.HOGGET);
        String sheet = Run.write(folder, "monday.csv", SHEET);
        return Run.of(Stream.concat(Stream.of("balance", spec, "--sheet", sheet), Stream.of(more))
                .toArray(String[]::new));
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void aPageIsWrittenBesideWhatIsPrinted() throws IOException {
        Run run = balance("--html", file("monday.html"));
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(run.out().contains("The sheet balances"), run.out());
        assertTrue(run.err().startsWith("The page was written to "), run.err());
        String page = Files.readString(folder.resolve("monday.html"));
        for (String words :
                new String[] {"Cutting test monday.csv", "The sheet balances.", "Take care", "revision 3"}) {
            assertTrue(page.contains(words), words);
        }
    }

    @Test
    void aPictureIsADrawingOrAnImageByHowItsNameEnds() throws IOException {
        Run run = balance("--tree-picture", file("tree.svg"), "--grams-picture", file("grams.PNG"));
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        assertTrue(Files.readString(folder.resolve("tree.svg")).startsWith("<svg "));
        assertEquals(1360, ImageIO.read(folder.resolve("grams.PNG").toFile()).getWidth());
    }

    @Test
    void aPictureOfAnotherKindIsRefusedBeforeAnythingIsRead() {
        Run run = balance("--tree-picture", file("tree.jpg"));
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("is not the name of a picture; let it end in .svg or .png."), run.err());
        assertEquals("", run.out());
        assertFalse(Files.exists(folder.resolve("tree.jpg")));
    }

    @Test
    void aPictureShowsOneSheet() {
        String other = Run.write(folder, "tuesday.csv", SHEET);
        Run run = balance(other, "--tree-picture", file("tree.svg"));
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("A picture shows one sheet, and 2 are named"), run.err());
    }

    @Test
    void severalSheetsGoOnOnePage() throws IOException {
        String other = Run.write(folder, "tuesday.csv", SHEET);
        Run run = balance(other, "--html", file("both.html"));
        assertEquals(ExitStatus.FINE, run.status(), run.err());
        String page = Files.readString(folder.resolve("both.html"));
        assertEquals(2, page.split("<section>", -1).length - 1);
    }

    @Test
    void nothingIsWrittenOverASheet() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.html"), folder.resolve("monday.csv"));
        Run.write(folder, "monday.csv", SHEET);
        Run run = balance("--html", link.toString());
        assertEquals(ExitStatus.WRONG_USAGE, run.status(), run.err());
        assertEquals(SHEET, Files.readString(folder.resolve("monday.csv")));
    }

    @Test
    void aFolderThatIsNotThereIsToldPlainly() {
        Run run = balance("--html", file("none/monday.html"));
        assertEquals(ExitStatus.COULD_NOT, run.status());
        assertTrue(run.err().contains("cannot be written"), run.err());
    }

    @Test
    void twoPicturesAreNotWrittenToOneFile() {
        Run run = balance("--tree-picture", file("one.svg"), "--grams-picture", file("one.svg"));
        assertEquals(ExitStatus.WRONG_USAGE, run.status());
        assertTrue(run.err().contains("Two pictures would be written to one file"), run.err());
    }

    @Test
    void noPageIsWrittenWhereASheetCouldNotBeRead() {
        String wrong = Run.write(folder, "wrong.csv", SHEET.replace("22.000 kg", "x"));
        Run run = balance(wrong, "--html", file("both.html"));
        assertEquals(ExitStatus.FINDINGS, run.status());
        assertTrue(run.err().contains("No page or picture was written"), run.err());
        assertFalse(Files.exists(folder.resolve("both.html")));
    }

    /** More shapes than a reader of drawings takes by itself. */
    @Test
    void aTreeOfFourHundredCutsBecomesAnImage() throws IOException {
        StringBuilder spec =
                new StringBuilder("language 1\nspecies sheep\nspecification \"Marram hogget\" revision 3 for sheep\n"
                        + "carcass cold, 20 kg to 24 kg\nstream mince, saleable\n");
        StringBuilder sheet = new StringBuilder(SHEET.substring(0, SHEET.indexOf("leg,")));
        for (int cut = 0; cut < 400; cut++) {
            spec.append("cut c").append(cut).append(" 0.2 %\n");
            sheet.append("c").append(cut).append(",all,0.044,0,kg\n");
        }
        String file = Run.write(folder, "many.cuts", spec + "rest -> mince\n");
        String weighed = Run.write(folder, "many.csv", sheet.toString());
        Run run = Run.of("balance", file, "--sheet", weighed, "--tree-picture", file("many.png"));
        assertTrue(run.err().contains("was written to"), run.err());
        assertTrue(ImageIO.read(folder.resolve("many.png").toFile()).getHeight() > 5_000);
    }
}
