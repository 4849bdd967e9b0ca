package fascicle.book.theme;

import fascicle.book.page.Page;
import fascicle.book.words.Words;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.StrongCacheStorage;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.CharArrayWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How a book looks: templates that lay pages out, one style, and what some pages need beside it.
 *
 * <p>A theme's templates see page records and the book's words, and nothing else; everything they print is escaped.
 * Safe for use from several threads.
 */
public final class Theme {

    /** The templates a theme has: one for each kind of page, the frame they share, and swatches side by side. */
    static final Set<String> TEMPLATES = new TreeSet<>(Set.of("frame.ftlh", "cover.ftlh", "entries.ftlh", "entry.ftlh",
            "groups.ftlh", "group.ftlh", "about.ftlh", "look-up.ftlh", "swatches.ftlh", "grid.ftlh", "ladders.ftlh",
            "repeats.ftlh", "string.ftlh", "shelf.ftlh", "plan.ftlh", "slip.ftlh"));

    /** The style a theme has. */
    static final String STYLE = "style.css";

    /** What an entry's page does not need, and what only the look-up needs; a theme may do without them. */
    static final List<String> FURTHER_STYLES = List.of("lists.css", "look-up.css");

    private static final String STYLES = "style/";

    /** Where a theme's files come from. */
    private interface Source {
        /** A file's bytes, or nothing where there is no such file. */
        Optional<byte[]> file(String name) throws IOException;
    }

    private final String name;
    private final byte[] style;
    private final Map<String, byte[]> besideStyle = new TreeMap<>();
    private final PageModels models;
    private final Map<String, Template> templates = new TreeMap<>();

    private Theme(String name, Source source) throws ThemeBroken {
        this.name = name;
        this.models = new PageModels(Words.shipped());
        List<ThemeBroken.Fault> faults = new ArrayList<>();
        this.style = required(source, STYLE, faults);
        filesOf(STYLE, style, source, faults);
        FURTHER_STYLES.forEach(further -> furtherStyle(further, source, faults));
        Map<String, String> texts = new TreeMap<>();
        for (String template : TEMPLATES) {
            String text = new String(required(source, template, faults), StandardCharsets.UTF_8);
            faults.addAll(TemplateScreen.faults(template, text, TEMPLATES));
            texts.put(template, text);
        }
        Configuration configuration = configuration(texts, models);
        for (String template : TEMPLATES) {
            if (faults.stream().noneMatch(fault -> fault.file().equals(template))) {
                parsed(configuration, template, faults).ifPresent(parsed -> templates.put(template, parsed));
            }
        }
        if (!faults.isEmpty()) {
            throw new ThemeBroken(faults);
        }
    }

    private void furtherStyle(String further, Source source, List<ThemeBroken.Fault> faults) {
        try {
            Optional<byte[]> found = source.file(further);
            if (found.isPresent()) {
                besideStyle.put(further, StyleFiles.lean(found.get()));
                filesOf(further, found.get(), source, faults);
            }
        } catch (IOException failed) {
            faults.add(unreadable(further, failed));
        }
    }

    private void filesOf(String file, byte[] css, Source source, List<ThemeBroken.Fault> faults) {
        for (StyleFiles.Named named : StyleFiles.of(file, css, faults)) {
            besideStyle.put(named.file(), required(source, named.file(), named.missing(file), faults));
        }
    }

    /**
     * Whether a theme comes with the program.
     *
     * @param name such as {@code longleaf}
     * @return whether {@link #shipped} knows it
     */
    public static boolean isShipped(String name) {
        return name.matches("[a-z0-9-]+") && Theme.class.getResource("/themes/" + name + "/" + STYLE) != null;
    }

    /**
     * A theme that comes with the program.
     *
     * @param name such as {@code longleaf}
     * @return the theme
     * @throws ThemeBroken if there is no such theme
     */
    public static Theme shipped(String name) throws ThemeBroken {
        if (!isShipped(name)) {
            throw new ThemeBroken(List.of(ThemeBroken.Fault.of(name,
                    "expected the name of a theme that comes with the program: longleaf")));
        }
        return new Theme(name, file -> {
            try (InputStream stream = Theme.class.getResourceAsStream("/themes/" + name + "/" + file)) {
                return stream == null ? Optional.empty() : Optional.of(stream.readAllBytes());
            }
        });
    }

    /**
     * A theme in a folder.
     *
     * @param folder the folder that holds its templates and its style
     * @return the theme
     * @throws ThemeBroken if a file is missing or reaches too far
     */
    public static Theme in(Path folder) throws ThemeBroken {
        Path last = folder.toAbsolutePath().normalize().getFileName();
        String called = last == null ? "" : last.toString().toLowerCase(Locale.ROOT);
        boolean plain = called.matches("[a-z0-9-]+") && !FURTHER_STYLES.contains(called + ".css");
        return new Theme(plain ? called : "theme", file -> {
            Path path = folder.resolve(file);
            return Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
                    ? Optional.of(Files.readAllBytes(path)) : Optional.empty();
        });
    }

    /**
     * Where the book publishes the style.
     *
     * @return an address such as {@code style/longleaf.css}
     */
    public String styleAddress() {
        return STYLES + name + ".css";
    }

    /**
     * The style.
     *
     * @return the bytes of the style's file
     */
    public byte[] style() {
        return StyleFiles.lean(style);
    }

    /**
     * What the book publishes beside the style: the faces and pictures that it names, and the further styles.
     *
     * @return addresses such as {@code style/alegreya.woff2}, in order
     */
    public List<String> besideStyle() {
        return besideStyle.keySet().stream().map(file -> STYLES + file).toList();
    }

    /**
     * A face or picture that a style names, or a further style.
     *
     * @param address one of {@link #besideStyle}
     * @return its bytes
     * @throws IllegalArgumentException if no such file lies beside the style
     */
    public byte[] fileBesideStyle(String address) {
        byte[] file = address.startsWith(STYLES) ? besideStyle.get(address.substring(STYLES.length())) : null;
        if (file == null) {
            throw new IllegalArgumentException("no such file lies beside the style: " + address);
        }
        return file.clone();
    }

    /**
     * Lays a page out.
     *
     * @param page what it says
     * @return the page in UTF-8
     * @throws ThemeBroken.WhileRendering if its template fails
     */
    public byte[] render(Page page) {
        CharArrayWriter out = new CharArrayWriter(1 << 14);
        Template template = templates.get(page.template());
        if (template == null) {
            throw new IllegalArgumentException("no theme has this template: " + page.template());
        }
        try {
            template.process(models.top(page), out);
        } catch (TemplateException failed) {
            throw new ThemeBroken.WhileRendering(TemplateFaults.of(page.template(), failed));
        } catch (IOException failed) {
            throw new ThemeBroken.WhileRendering(
                    ThemeBroken.Fault.of(page.template(), String.valueOf(failed.getMessage())));
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] required(Source source, String file, List<ThemeBroken.Fault> faults) {
        return required(source, file, ThemeBroken.Fault.of(file, "expected a file of this name in the theme"), faults);
    }

    private static byte[] required(Source source, String file, ThemeBroken.Fault missing,
            List<ThemeBroken.Fault> faults) {
        try {
            Optional<byte[]> bytes = source.file(file);
            if (bytes.isPresent()) {
                return bytes.get();
            }
            faults.add(missing);
        } catch (IOException failed) {
            faults.add(unreadable(file, failed));
        }
        return new byte[0];
    }

    private static ThemeBroken.Fault unreadable(String file, IOException failed) {
        return ThemeBroken.Fault.of(file, "expected a file that can be read: " + failed.getMessage());
    }

    private static Optional<Template> parsed(Configuration configuration, String template,
            List<ThemeBroken.Fault> faults) {
        try {
            return Optional.of(configuration.getTemplate(template));
        } catch (ParseException broken) {
            faults.add(TemplateFaults.of(template, broken));
        } catch (IOException failed) {
            faults.add(ThemeBroken.Fault.of(template, "expected a template that can be read: " + failed.getMessage()));
        }
        return Optional.empty();
    }

    private static Configuration configuration(Map<String, String> texts, PageModels models) {
        StringTemplateLoader loader = new StringTemplateLoader();
        texts.forEach((name, text) -> loader.putTemplate(name, text, 0));
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_35);
        configuration.setTemplateLoader(loader);
        configuration.setCacheStorage(new StrongCacheStorage());
        configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        configuration.setLocalizedLookup(false);
        configuration.setRecognizeStandardFileExtensions(false);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setAutoEscapingPolicy(Configuration.FORCE_AUTO_ESCAPING_POLICY);
        configuration.setTagSyntax(Configuration.ANGLE_BRACKET_TAG_SYNTAX);
        configuration.setInterpolationSyntax(Configuration.DOLLAR_INTERPOLATION_SYNTAX);
        configuration.setObjectWrapper(models);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        configuration.setLocale(Locale.ROOT);
        configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
        configuration.setNumberFormat("computer");
        return configuration;
    }
}
