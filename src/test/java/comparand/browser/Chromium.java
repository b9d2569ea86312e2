package comparand.browser;

import java.io.File;
import java.nio.file.Path;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.chromium.ChromiumDriver;
import org.openqa.selenium.chromium.ChromiumDriverCommandExecutor;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.CommandInfo;
import org.openqa.selenium.remote.http.ClientConfig;
import org.openqa.selenium.remote.http.HttpMethod;

/**
 * One headless Chromium with a profile of its own. The browser and its driver are those of {@code comparand.chromium} and
 * {@code comparand.chromedriver}; nothing is looked for and nothing is fetched.
 */
final class Chromium extends ChromiumDriver {

    /** The library warns that it knows no typed commands for this release; only plain ones are sent. */
    private static final Logger QUIET = Logger.getLogger("org.openqa.selenium");

    private static final String COMMAND = "devtools";
    private static final CommandInfo PLACE = new CommandInfo("/session/:sessionId/goog/cdp/execute", HttpMethod.POST);

    private final ChromeDriverService service;

    private Chromium(ChromeDriverService service, ChromeOptions options) {
        super(
                new ChromiumDriverCommandExecutor(service, Map.of(COMMAND, PLACE), ClientConfig.defaultConfig()),
                options,
                ChromeOptions.CAPABILITY);
        this.service = service;
    }

    /** Starts one that keeps what it must remember in a folder. */
    static Chromium start(Path profile) {
        QUIET.setLevel(Level.SEVERE);
        var service = new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(System.getProperty("comparand.chromedriver", "/usr/bin/chromedriver")))
                .usingAnyFreePort()
                .build();
        var options = new ChromeOptions();
        options.setBinary(System.getProperty("comparand.chromium", "/usr/bin/chromium"));
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--lang=en",
                "--user-data-dir=" + profile);
        var logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        return new Chromium(service, options);
    }

    /** Sends a command of the Chrome DevTools Protocol. */
    Map<?, ?> command(String name, Map<String, Object> parameters) {
        var answer = execute(COMMAND, Map.of("cmd", name, "params", parameters)).getValue();
        return answer instanceof Map<?, ?> map ? map : Map.of();
    }

    @Override
    public void quit() {
        super.quit();
        service.stop();
    }
}
