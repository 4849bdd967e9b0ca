package fascicle.bench;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * The floor under a publishing: what the generator's libraries cost by themselves, with no notebook understood and no
 * figure computed.
 *
 * <p>Each Markdown file is read, its front matter parsed token by token, its body turned into HTML (with tables), one
 * template of a typical page filled, and the page written into a fresh folder. One page for a file, so a file of
 * several pots costs one template here.
 *
 * <p>Arguments: the notebook, the folder to write, the number of threads.
 */
public final class LibrariesAlone {

    private static final String PAGE = """
            <!DOCTYPE html>
            <html lang="en">
            <head><meta charset="utf-8"><title>${title}</title><link rel="stylesheet" href="../look.css"></head>
            <body>
            <nav><a href="../index.html">The book</a> <a href="index.html">Dye days</a></nav>
            <main>
            <h1>${title}</h1>
            <dl>
            <#list facts as fact>
            <dt>${fact.key}</dt><dd>${fact.value}</dd>
            </#list>
            </dl>
            ${body?no_esc}
            </main>
            <footer>Page ${number}</footer>
            </body>
            </html>
            """;

    private final YAMLFactory yaml = new YAMLFactory();
    private final Parser markdown = Parser.builder().extensions(List.of(TablesExtension.create())).build();
    private final HtmlRenderer html = HtmlRenderer.builder().extensions(List.of(TablesExtension.create())).build();
    private final Template page;
    private final Path notebook;
    private final Path target;

    /** A line of the page's table. */
    public record Fact(String key, String value) {
    }

    private LibrariesAlone(Path notebook, Path target) throws IOException {
        this.notebook = notebook;
        this.target = target;
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setLocale(Locale.ROOT);
        page = new Template("page", new StringReader(PAGE), configuration);
    }

    public static void main(String[] args) throws IOException, InterruptedException, ExecutionException {
        if (args.length != 3) {
            System.err.println("usage: LibrariesAlone NOTEBOOK TARGET THREADS");
            System.exit(2);
        }
        new LibrariesAlone(Path.of(args[0]), Path.of(args[1])).publish(Integer.parseInt(args[2]));
    }

    private void publish(int threads) throws IOException, InterruptedException, ExecutionException {
        Files.createDirectories(target);
        List<Path> files;
        try (Stream<Path> walk = Files.walk(notebook)) {
            files = walk.filter(file -> file.toString().endsWith(".md")).sorted().toList();
        }
        AtomicInteger next = new AtomicInteger();
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        List<Future<?>> running = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            running.add(workers.submit(() -> {
                for (int n = next.getAndIncrement(); n < files.size(); n = next.getAndIncrement()) {
                    page(files.get(n), n);
                }
                return null;
            }));
        }
        workers.shutdown();
        for (Future<?> worker : running) {
            worker.get();
        }
    }

    private void page(Path file, int number) throws IOException, TemplateException {
        String text = Files.readString(file);
        int end = text.indexOf("\n---\n");
        List<Fact> facts = facts(text.substring(4, end));
        String body = html.render(markdown.parse(text.substring(end + 5)));
        StringWriter filled = new StringWriter(text.length() * 2);
        page.process(Map.of("title", facts.get(0).value(), "facts", facts, "body", body, "number", number), filled);
        String name = notebook.relativize(file).toString().replace(".md", ".html").replaceAll("[/\\\\]", "-");
        Files.writeString(target.resolve(name), filled.toString());
    }

    private List<Fact> facts(String frontMatter) {
        List<Fact> facts = new ArrayList<>();
        try (JsonParser tokens = yaml.createParser(ObjectReadContext.empty(), frontMatter)) {
            for (JsonToken token = tokens.nextToken(); token != null; token = tokens.nextToken()) {
                if (token.isScalarValue()) {
                    String key = tokens.currentName();
                    facts.add(new Fact(key == null ? "" : key, tokens.getString()));
                }
            }
        }
        return facts;
    }
}
