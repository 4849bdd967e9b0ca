package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Entries stand in every list in which a maker would look for them, and in no other. */
class ListsTest {

    private static final List<String> LISTS =
            List.of("days", "methods", "lots", "dyes", "conditions", "families", "years");

    /** Where an entry belongs, where its own data tell it by one word. */
    private static final Map<String, Function<JsonNode, String>> BELONGS = Map.of(
            "days", entry -> text(entry.required("date")),
            "years", entry -> text(entry.required("date")).substring(0, 4),
            "lots", entry -> text(entry.required("needles").required("lot")),
            "conditions", entry -> text(entry.required("needles").required("condition")),
            "families", entry -> text(entry.required("colour").path("family"))
                    .toLowerCase(Locale.ROOT)
                    .replace(' ', '-'));

    @ParameterizedTest
    @EnumSource
    void a_groups_data_names_exactly_the_entries_that_belong_to_it(Edition edition) {
        JsonNode data = PublishedBook.ofTheDemo(edition).data();
        assertAll(BELONGS.entrySet().stream().map(list -> () -> {
            Map<String, List<String>> expected = new TreeMap<>();
            data.required("entries").forEach(entry -> {
                String group = list.getValue().apply(entry);
                if (!group.isEmpty()) {
                    expected.computeIfAbsent(group, none -> new ArrayList<>()).add(text(entry.required("id")));
                }
            });
            Map<String, List<String>> told = new TreeMap<>();
            data.required(list.getKey()).forEach(group -> told.put(text(group.required("id")), entries(group)));
            told.values().removeIf(List::isEmpty);
            assertFalse(expected.isEmpty(), list.getKey());
            assertEquals(expected, told, list.getKey());
        }));
    }

    @ParameterizedTest
    @EnumSource
    void a_methods_entries_follow_it_or_a_method_that_follows_it(Edition edition) {
        JsonNode data = PublishedBook.ofTheDemo(edition).data();
        Map<String, String> follows = data.required("methods").valueStream().collect(Collectors.toMap(
                method -> text(method.required("id")), method -> text(method.required("follows"))));
        data.required("methods").forEach(method -> {
            String id = text(method.required("id"));
            List<String> expected = data.required("entries").valueStream()
                    .filter(entry -> line(text(entry.required("method")), follows).contains(id))
                    .map(entry -> text(entry.required("id")))
                    .toList();
            assertEquals(expected, entries(method), id);
        });
    }

    /** A method, the one that it follows, and so on. */
    private static List<String> line(String method, Map<String, String> follows) {
        List<String> line = new ArrayList<>();
        for (String step = method; !step.isEmpty(); step = follows.getOrDefault(step, "")) {
            line.add(step);
        }
        return line;
    }

    @ParameterizedTest
    @EnumSource
    void a_dyes_entries_hold_that_dye(Edition edition) {
        JsonNode data = PublishedBook.ofTheDemo(edition).data();
        Map<String, String> baths = data.required("entries").valueStream().collect(Collectors.toMap(
                entry -> text(entry.required("id")),
                // What stands in a used bath was another entry's doing.
                entry -> entry.required("bath").path("dye").toString() + entry.required("bath").path("assistants")));
        data.required("dyes").forEach(dye -> {
            String named = "\"is\":\"" + text(dye.required("id")) + '"';
            List<String> inTheBath = baths.keySet().stream()
                    .filter(id -> baths.get(id).contains(named))
                    .sorted()
                    .toList();
            List<String> told = entries(dye);
            assertEquals(List.of(), inTheBath.stream().filter(id -> !told.contains(id)).toList(), named);
        });
    }

    @ParameterizedTest
    @EnumSource
    void a_groups_page_shows_exactly_the_entries_of_its_data(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        JsonNode data = book.data();
        List<Executable> checks = new ArrayList<>();
        for (String list : LISTS) {
            TreeSet<String> pages = new TreeSet<>(book.pages().stream()
                    .filter(address -> address.startsWith(list + "/"))
                    .toList());
            for (JsonNode group : data.required(list)) {
                String address = list + "/" + text(group.required("id")) + ".html";
                checks.add(() -> assertRows(entries(group), book.page(address), address));
                pages.remove(address);
            }
            checks.add(() -> assertEquals(List.of(), List.copyOf(pages), "pages of no group"));
        }
        assertAll(checks);
    }

    @ParameterizedTest
    @EnumSource
    void the_list_of_all_entries_begins_with_the_newest_day(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        List<String> rows = rows(book.page("entries.html"), "entries/");
        assertEquals(new TreeSet<>(book.entries()), new TreeSet<>(rows));
        assertEquals(book.entries().size(), rows.size());
        List<String> days = rows.stream().map(id -> id.substring(0, 10)).toList();
        assertEquals(days.stream().sorted(Comparator.reverseOrder()).toList(), days);
    }

    @ParameterizedTest
    @EnumSource
    void lists_name_every_group_with_its_count(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        JsonNode data = book.data();
        assertAll(LISTS.stream().map(list -> () -> {
            Map<String, String> expected = new TreeMap<>();
            data.required(list).forEach(group ->
                    expected.put(text(group.required("id")), String.valueOf(entries(group).size())));
            Map<String, String> shown = new TreeMap<>();
            for (Element row : book.page(list + ".html").select("ul.specimens > li")) {
                String id = idOf(row.select(".name a").attr("href"), list + "/");
                shown.put(id, row.select(".under").text().split(" ")[0]);
            }
            assertEquals(expected, shown, list);
            Element door = book.page("index.html").select("ul.doors li:has(a[href=" + list + ".html])").first();
            assertEquals(String.valueOf(expected.size()), door == null ? "" : door.select(".count").text(), list);
        }));
    }

    @ParameterizedTest
    @EnumSource
    void days_are_counted_and_not_pots(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        JsonNode data = book.data();
        Map<String, JsonNode> byId = data.required("entries").valueStream()
                .collect(Collectors.toMap(entry -> text(entry.required("id")), entry -> entry));
        List<Executable> checks = new ArrayList<>();
        for (String list : LISTS) {
            for (JsonNode group : data.required(list)) {
                List<JsonNode> members = entries(group).stream().map(byId::get).toList();
                if (members.isEmpty()) {
                    continue;
                }
                String address = list + "/" + text(group.required("id")) + ".html";
                Document page = book.page(address);
                JsonNode days = group.required("days");
                for (String verdict : List.of("worked", "partly", "failed")) {
                    long count = dates(members.stream()
                            .filter(entry -> text(entry.required("outcome").path("verdict")).equals(verdict))
                            .toList());
                    checks.add(() -> assertEquals(count, days.required(verdict).asLong(), address + ": " + verdict));
                    String label = verdict.equals("partly") ? "Days it partly worked" : "Days it " + verdict;
                    checks.add(() -> assertEquals(String.valueOf(count), fact(page, label), address));
                }
                checks.add(() -> assertEquals(dates(members), days.required("all").asLong(), address));
                checks.add(() -> assertEquals(String.valueOf(members.size()), fact(page, "Entries"), address));
            }
        }
        assertAll(checks);
    }

    /** All of a group's entries stand there, the newest day first. */
    private static void assertRows(List<String> expected, Document page, String address) {
        List<String> shown = rows(page, "../entries/");
        assertEquals(expected.size(), shown.size(), address);
        assertEquals(new TreeSet<>(expected), new TreeSet<>(shown), address);
        if (!address.startsWith("days/")) {
            List<String> days = shown.stream().map(id -> id.substring(0, 10)).toList();
            assertEquals(days.stream().sorted(Comparator.reverseOrder()).toList(), days, address);
        }
    }

    private static String fact(Document page, String label) {
        return page.select("dl.facts > div").stream()
                .filter(fact -> fact.select("dt").text().equals(label))
                .map(fact -> fact.select("dd").text())
                .collect(Collectors.joining(" | "));
    }

    private static long dates(List<JsonNode> entries) {
        return entries.stream().map(entry -> text(entry.required("date"))).distinct().count();
    }

    private static List<String> entries(JsonNode group) {
        return group.required("entries").valueStream().map(ListsTest::text).toList();
    }

    private static List<String> rows(Document page, String folder) {
        String within = page.select(".group").isEmpty() ? "" : ".sheaf ";
        return page.select(within + "ul.specimens .name a").stream()
                .map(link -> idOf(link.attr("href"), folder))
                .toList();
    }

    private static String idOf(String address, String folder) {
        assertEquals(folder, address.substring(0, Math.min(folder.length(), address.length())), address);
        return address.substring(folder.length()).replace(".html", "");
    }

    private static String text(JsonNode node) {
        return node.isString() ? node.asString() : "";
    }
}
