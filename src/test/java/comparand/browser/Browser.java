package comparand.browser;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;

/** A headless browser as a reader uses it, and what can be seen of it from outside. One for a class of tests. */
public final class Browser implements AutoCloseable {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Where pictures of the page are kept, to be looked at. */
    private static final Path SCREENSHOTS = Path.of("target/screenshots");

    private final Chromium driver;
    private final Path profile;
    private final Downloads downloads;
    private boolean scripts = true;

    private Browser(Path folder) throws IOException {
        profile = Files.createDirectory(folder.resolve("profile"));
        downloads = new Downloads(Files.createDirectory(folder.resolve("downloads")));
        driver = Chromium.start(profile);
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
        size(1280, 900);
        driver.command(
                "Browser.grantPermissions",
                Map.of("permissions", List.of("clipboardReadWrite", "clipboardSanitizedWrite")));
        driver.command(
                "Browser.setDownloadBehavior",
                Map.of(
                        "behavior",
                        "allow",
                        "downloadPath",
                        downloads.folder().toAbsolutePath().toString()));
    }

    public static Browser start() {
        try {
            return new Browser(Files.createTempDirectory("comparand-browser"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens a file in a window as good as new; a fragment may follow, with its {@code #}. */
    public Browser open(Path file, String fragment) {
        driver.get("about:blank");
        complaints();
        requests();
        driver.get(file.toAbsolutePath().toUri() + fragment);
        return this;
    }

    public Browser open(Path file) {
        return open(file, "");
    }

    /** Lays the whole page out at once, the parts below the window too, which a browser else puts off until they are near. */
    public Browser whole() {
        return styled("* {content-visibility: visible !important}");
    }

    /** Adds rules of style, as a reader may; the page's own policy does not bind a reader. */
    public Browser styled(String rules) {
        run("const s = new CSSStyleSheet(); s.replaceSync(arguments[0]); document.adoptedStyleSheets.push(s)", rules);
        return settle();
    }

    /** Sets the size of the window in CSS pixels. */
    public Browser size(int width, int height) {
        driver.command(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        return this;
    }

    /** Whether the reader's system asks for dark colours. */
    public Browser dark(boolean dark) {
        driver.command(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
        return this;
    }

    /** The reader's system asks for no movement. */
    public Browser still() {
        driver.command(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
        return this;
    }

    /** Whether the page is set as for paper. */
    public Browser paper(boolean paper) {
        driver.command("Emulation.setEmulatedMedia", Map.of("media", paper ? "print" : ""));
        return this;
    }

    /** Whether scripts of a page opened from now on run. */
    public Browser scripts(boolean run) {
        scripts = run;
        driver.command("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
        return this;
    }

    /** What a script gives back ({@code return ...}); the page's own policy does not bind it. */
    public Optional<Object> run(String script, Object... arguments) {
        return Optional.ofNullable(driver.executeScript(script, arguments));
    }

    /** The text that an expression has. */
    public String text(String expression, Object... arguments) {
        return run("return String(" + expression + ")", arguments).orElseThrow().toString();
    }

    /** The number that an expression has. */
    public double number(String expression, Object... arguments) {
        return ((Number) run("return Number(" + expression + ")", arguments).orElseThrow()).doubleValue();
    }

    public boolean holds(String expression, Object... arguments) {
        return Boolean.TRUE.equals(
                run("return Boolean(" + expression + ")", arguments).orElseThrow());
    }

    /** The value of an expression as data, functions and elements left out. */
    public JsonNode data(String expression, Object... arguments) {
        return read(text("JSON.stringify(" + expression + ")", arguments));
    }

    /** The texts of an expression that is a list of texts. */
    public List<String> texts(String expression, Object... arguments) {
        var texts = new ArrayList<String>();
        data("Array.from(" + expression + ")", arguments).forEach(t -> texts.add(t.asText()));
        return texts;
    }

    /** What a script gives to the last of its arguments, a function. */
    public String later(String script, Object... arguments) {
        return String.valueOf(driver.executeAsyncScript(script, arguments));
    }

    /** The text of an element as a reader sees it, blanks and line ends folded. */
    public String shown(String selector) {
        return folded(text("document.querySelector(arguments[0]).innerText", selector));
    }

    /** The text of an element whether it is shown or folded away, blanks and line ends folded. */
    public String content(String selector) {
        return folded(text("document.querySelector(arguments[0]).textContent", selector));
    }

    /** Blanks of every kind and line ends as single blanks. */
    static String folded(String text) {
        return text.replaceAll("[\\s\u00a0\u202f\u2009]+", " ").strip();
    }

    public WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    public List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    /** Presses keys one after the other, wherever the focus is. */
    public Browser press(CharSequence... keys) {
        for (var key : keys) {
            new Actions(driver).sendKeys(key).perform();
        }
        return this;
    }

    /** Until two frames have been painted, so that what the page does later than at once is done too. */
    public Browser settle() {
        if (!scripts) {
            return this; // nothing is done later where nothing runs
        }
        later("const done = arguments[arguments.length - 1];"
                + "setTimeout(() => requestAnimationFrame(() => requestAnimationFrame(() => done('')), 0), 250);");
        return this;
    }

    public String address() {
        return requireNonNull(driver.getCurrentUrl());
    }

    /** Everything the page has complained of since last asked: the console from warnings on, errors nobody caught. */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(e -> e.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::toString)
                .toList();
    }

    /** The address of every request since last asked, the page's own included. */
    public List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(e -> read(e.getMessage()).path("message"))
                .filter(m -> m.path("method").asText().equals("Network.requestWillBeSent"))
                .map(m -> m.at("/params/request/url").asText())
                .toList();
    }

    /** The text of the page as printed on paper, blanks and line ends folded. */
    public String printed() {
        var pdf = driver.command("Page.printToPDF", Map.of("printBackground", true, "preferCSSPageSize", true));
        var bytes = Base64.getDecoder().decode(requireNonNull(pdf.get("data")).toString());
        try (var document = Loader.loadPDF(bytes)) {
            return folded(new PDFTextStripper().getText(document));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Pictures of the window at three sizes, as NAME-WIDTH.png. */
    public void screenshots(String name) {
        for (var size : List.of(new int[] {320, 700}, new int[] {1280, 900}, new int[] {1920, 1080})) {
            size(size[0], size[1]).settle();
            screenshot(name + "-" + size[0]);
        }
        size(1280, 900);
    }

    public void screenshot(String name) {
        var picture = driver.command("Page.captureScreenshot", Map.of("format", "png"));
        try {
            Files.createDirectories(SCREENSHOTS);
            Files.write(
                    SCREENSHOTS.resolve(name + ".png"),
                    Base64.getDecoder()
                            .decode(requireNonNull(picture.get("data")).toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The one file downloaded since this browser was started or this was last asked; it is taken out of the folder. */
    public Path downloaded() {
        return downloads.next();
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file of an address without its fragment. */
    static Path fileOf(String address) {
        return Path.of(URI.create(address.replaceAll("#.*", "")));
    }

    @Override
    public void close() {
        driver.quit();
        try (Stream<Path> left = Files.walk(requireNonNull(profile.getParent()))) {
            left.sorted((a, b) -> b.compareTo(a)).map(Path::toFile).forEach(java.io.File::delete);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
