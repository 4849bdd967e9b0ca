package fascicle.site;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/**
 * A headless Chromium of this machine, with nothing fetched and no network needed.
 *
 * <p>Sizes are CSS pixels. {@link #driver()} is there for what has no word here: to find, click and type.
 */
public final class Browser implements AutoCloseable {

    /** A narrow phone. */
    public static final int PHONE = 360;

    /** A laptop. */
    public static final int LAPTOP = 1280;

    private static final int HEIGHT = 800;

    /** Held here, because a logger that nobody holds forgets its level. */
    private static final Logger DRIVER_CHATTER = Logger.getLogger("org.openqa.selenium");

    /** WCAG 2.2, relative luminance. */
    private static final String LUMINANCE =
            """
            const luminance = colour => {
              const [r, g, b] = colour.match(/[0-9.]+/g).slice(0, 3).map(channel => {
                const c = channel / 255;
                return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
              });
              return 0.2126 * r + 0.7152 * g + 0.0722 * b;
            };
            """;

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /**
     * Opens a browser.
     *
     * @param width the width of the page, in CSS pixels
     * @param flags more of Chromium's own flags
     * @throws IllegalStateException if Chromium or its driver is not installed
     */
    public static Browser open(int width, String... flags) {
        DRIVER_CHATTER.setLevel(Level.SEVERE);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program("chromium", "chromium-browser", "google-chrome"));
        // No sandbox and no shared memory: containers, where tests run as root, offer neither.
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-dev-shm-usage",
                "--disable-gpu",
                "--hide-scrollbars",
                "--force-color-profile=srgb",
                "--lang=en-GB");
        options.addArguments(flags);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(program("chromedriver"))
                .usingAnyFreePort()
                .build();
        Browser browser = new Browser(new ChromeDriver(service, options));
        browser.width(width);
        return browser;
    }

    /** Makes the page this wide, in CSS pixels; narrower than any window may be, if need be. */
    public Browser width(int width) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", HEIGHT, "deviceScaleFactor", 1, "mobile", false));
        return this;
    }

    /** What a reader's system asks pages for. */
    enum Light {
        LIGHT,
        DARK
    }

    /** Asks pages for light or dark colours from now on. */
    Browser light(Light light) {
        return media("", light);
    }

    /** Shows pages as they are on paper, or on the screen again. */
    Browser onPaper(boolean paper) {
        return media(paper ? "print" : "", Light.LIGHT);
    }

    private Browser media(String medium, Light light) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        medium,
                        "features",
                        List.of(Map.of(
                                "name", "prefers-color-scheme", "value", light.name().toLowerCase(Locale.ROOT)))));
        return this;
    }

    /** The relative luminance of an opaque colour of the first element that a selector finds: 0 black, 1 white. */
    double luminance(String selector, String property) {
        return ((Number) script(
                        LUMINANCE + "return luminance(getComputedStyle(document.querySelector(arguments[0]))"
                                + ".getPropertyValue(arguments[1]));",
                        selector,
                        property))
                .doubleValue();
    }

    /**
     * The words that stand out least from what is behind them, if their contrast ratio is below a least one; else
     * nothing. Words that are not seen, such as those for the first key, are left out.
     */
    String faintest(double least) {
        return (String) script(
                LUMINANCE
                        + """
                        let worst = '', lowest = arguments[0];
                        for (const element of document.body.querySelectorAll('*')) {
                          const words = [...element.childNodes]
                              .filter(node => node.nodeType === 3).map(node => node.data.trim()).join(' ').trim();
                          const box = element.getBoundingClientRect();
                          if (!words || element.closest('svg') || box.right <= 0 || box.width === 0) continue;
                          let behind = element;
                          while (behind && /, 0\\)$/.test(getComputedStyle(behind).backgroundColor)) {
                            behind = behind.parentElement;
                          }
                          const one = luminance(getComputedStyle(element).color);
                          const two = luminance(getComputedStyle(behind).backgroundColor);
                          const contrast = (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
                          if (contrast < lowest) { lowest = contrast; worst = words + ' (' + contrast + ')'; }
                        }
                        return worst;
                        """,
                least);
    }

    /** Opens a file from the disk, as a double click does, and waits until it is loaded. */
    public Browser show(Path file) {
        driver.get(file.toUri().toString());
        return this;
    }

    /** What the pages have written to the console since this was last asked, of the level warning or severe. */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(entry -> entry.getLevel() + " " + entry.getMessage())
                .toList();
    }

    /** How far the page can be scrolled sideways, in CSS pixels; 0 where it fits. */
    public long sidewaysScroll() {
        return (Long) script("const page = document.documentElement;"
                + "return Math.max(page.scrollWidth, document.body.scrollWidth) - page.clientWidth;");
    }

    /** What makes a page wider than the screen: the first elements that reach beyond it and hold no other that does. */
    String tooWide() {
        return (String) script("""
                const edge = document.documentElement.clientWidth + 1;
                const beyond = element => element.getBoundingClientRect().right > edge;
                return [...document.body.querySelectorAll('*')]
                    .filter(element => beyond(element) && ![...element.children].some(beyond) && !element.closest('.scroll, svg'))
                    .slice(0, 3).map(element => element.parentElement.outerHTML.slice(0, 200)).join(' | ');
                """);
    }

    /** Waits until a script says yes, ten seconds at most. */
    void until(String script) {
        long last = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
        while (!Boolean.TRUE.equals(script(script))) {
            if (System.nanoTime() > last) {
                throw new IllegalStateException("never came true: " + script);
            }
            Thread.onSpinWait();
        }
    }

    /** The value that a script's {@code return} gives, {@code null} excluded. */
    public Object script(String script, Object... arguments) {
        return Objects.requireNonNull(driver.executeScript(script, arguments), script);
    }

    /** Keeps a picture of what is in view, in {@code target/screens/NAME.png}. */
    public Path screenshot(String name) {
        return keep(name + ".png", driver.getScreenshotAs(OutputType.BYTES));
    }

    /** Prints the page on A4, in {@code target/screens/NAME.pdf}. */
    public Path print(String name) {
        PrintOptions paper = new PrintOptions();
        paper.setPageSize(new PageSize(29.7, 21.0));
        return keep(name + ".pdf", Base64.getDecoder().decode(driver.print(paper).getContent()));
    }

    /** The driver itself. */
    public ChromeDriver driver() {
        return driver;
    }

    @Override
    public void close() {
        driver.quit();
    }

    private static Path keep(String name, byte[] content) {
        try {
            Path folder = Files.createDirectories(Checkout.target().resolve("screens"));
            return Files.write(folder.resolve(name), content);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static File program(String... names) {
        List<Path> folders = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(Path::of)
                .toList();
        return Stream.of(names)
                .flatMap(name -> folders.stream().map(folder -> folder.resolve(name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("Not on the PATH: " + String.join(", ", names)
                        + "; site-tests/everything installs what the tests need"))
                .toFile();
    }
}
