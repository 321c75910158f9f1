package dev.gambrel.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A browser without a window, as it is installed: {@code -Dbrowser=…} and {@code -Dbrowser.driver=…}, or on the path. */
final class Browser implements AutoCloseable {
    private static final List<String> ARGUMENTS = List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--hide-scrollbars");
    private static final int HEIGHT = 1000;

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** The tests that ask for it are skipped where there is none; where all must run, they fail. */
    static Browser open(Path emptyFolder) {
        Optional<File> chromium = found("browser", "chromium", "chromium-browser", "google-chrome");
        Optional<File> chromedriver = found("browser.driver", "chromedriver");
        if (chromium.isEmpty() || chromedriver.isEmpty()) {
            String why = "no chromium and chromedriver are on the path: pages are not looked at in a browser";
            Assertions.assertNull(System.getenv("CI"), why);
            Assumptions.abort(why);
        }
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.get());
        options.addArguments(ARGUMENTS);
        options.addArguments("--user-data-dir=" + emptyFolder);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(chromedriver.get())
                .usingAnyFreePort()
                .build();
        return new Browser(new ChromeDriver(service, options));
    }

    private static Optional<File> found(String property, String... names) {
        Stream<Path> named = Stream.ofNullable(System.getProperty(property)).map(Path::of);
        Stream<Path> onThePath = Stream.of(names)
                .flatMap(name -> Stream.of(System.getenv("PATH").split(File.pathSeparator))
                        .map(folder -> Path.of(folder, name)));
        return Stream.concat(named, onThePath)
                .filter(Files::isExecutable)
                .map(Path::toFile)
                .findFirst();
    }

    /** Opens a file at a width in pixels; what was logged before is forgotten. */
    void open(Path page, int width) {
        driver.get("about:blank");
        logged(LogType.BROWSER);
        logged(LogType.PERFORMANCE);
        driver.manage().window().setSize(new Dimension(width, HEIGHT));
        driver.get(page.toUri().toString());
    }

    private List<String> logged(String type) {
        return driver.manage().logs().get(type).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Whatever the page made the browser say. */
    List<String> complaints() {
        return logged(LogType.BROWSER);
    }

    /** What was asked of the network or of the disk. */
    List<String> requests() {
        return logged(LogType.PERFORMANCE).stream()
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .toList();
    }

    /** What a look at the page tells. */
    Object look(String script) {
        return driver.executeScript(script);
    }

    @SuppressWarnings("unchecked")
    List<String> list(String script) {
        return (List<String>) look(script);
    }

    /** The page as it is printed, on the paper that it asks for. */
    byte[] print() {
        Object data = driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true))
                .get("data");
        return Base64.getDecoder().decode((String) data);
    }

    @Override
    public void close() {
        driver.quit();
    }
}
