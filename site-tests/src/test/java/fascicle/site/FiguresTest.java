package fascicle.site;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** A page and {@code data/book.json} show the same figures, to the last digit shown. */
class FiguresTest {

    @ParameterizedTest
    @EnumSource
    void an_entry_shows_its_colour(Edition edition) {
        onEveryEntry(edition, (sheet, entry) -> {
            JsonNode colour = entry.required("colour");
            if (colour.isNull()) {
                sheet.shows("What came out", "Hex", "");
                sheet.shows("What came out", "Colour", "");
                return;
            }
            sheet.shows("What came out", "Colour", text(colour, "name"));
            sheet.shows("What came out", "Hex", text(colour, "hex"));
            String[] lab = sheet.fact("What came out", "Lab (D50)").split(", ");
            assertEquals(3, lab.length, sheet.name());
            for (int i = 0; i < lab.length; i++) {
                ShownFigure.of(lab[i]).agreesWith(colour.required("lab").required(i), sheet.name());
            }
            String readings = sheet.fact("What came out", "Readings");
            assertEquals(colour.required("readings").asInt(), Integer.parseInt(readings.split(",")[0]), sheet.name());
            sheet.difference("What came out", "Unlevelness", colour.required("unlevelness_de00"));
            sheet.difference("What came out", "Shift from the bare needles", colour.required("shift_de00"));
            sheet.difference("What came out", "From the target", colour.required("target_de00"));
            Element swatch = sheet.page().select("main figure.dyed svg.swatch.large").first();
            assertEquals(text(colour, "name"), swatch == null ? "" : swatch.select("> title").text(), sheet.name());
        });
    }

    @ParameterizedTest
    @EnumSource
    void an_entry_shows_its_outcome(Edition edition) {
        onEveryEntry(edition, (sheet, entry) -> {
            assertEquals(text(entry, "title"), sheet.page().select("h1").text());
            JsonNode tag = entry.required("tag");
            String under = sheet.page().select("p.over").text();
            assertEquals(!tag.isNull(), under.contains("Tag "), sheet.name());
            assertTrue(tag.isNull() || under.contains("Tag " + tag.asString() + " "), under);
            JsonNode outcome = entry.required("outcome");
            String verdict = sheet.page().select("p.outcome .verdict").text();
            String sentence = verdict.isEmpty() ? "" : verdict.toLowerCase(Locale.ROOT).replace(".", "");
            assertEquals(text(outcome, "verdict"), sentence, sheet.name());
            JsonNode evenness = outcome.path("evenness");
            sheet.shows("What came out", "Evenness", evenness.isNumber() ? evenness.asInt() + " of 5" : "");
            sheet.shows("What came out", "Feel", text(outcome, "feel"));
            List<String> faults = outcome.path("faults").valueStream()
                    .map(fault -> fault.asString().replace('-', ' '))
                    .toList();
            sheet.shows("What came out", "Faults", String.join(", ", faults));
            JsonNode fastness = entry.required("fastness");
            assertEquals(text(fastness, "rub_dry"), grade(sheet.fact("Since then", "Rubs off dry, grade")), sheet.name());
            assertEquals(text(fastness, "rub_wet"), grade(sheet.fact("Since then", "Rubs off wet, grade")), sheet.name());
        });
    }

    @Test
    void an_entry_shows_its_maker_what_is_left_and_what_it_cost() {
        onEveryEntry(Edition.STUDIO, (sheet, entry) -> {
            if (!entry.required("kept").isNull()) {
                sheet.figureOrWhy("Since then", "Kept: left", entry.at("/kept/left_g"), "g");
            }
            sheet.moneyOrWhy("The needles", "Cost of dyes and assistants", entry.at("/cost/total"));
        });
    }

    @Test
    void the_shelf_shows_what_the_data_say() {
        PublishedBook book = PublishedBook.ofTheDemo(Edition.STUDIO);
        Document shelf = book.page("shelf.html");
        Map.of("lots", "left_g", "dyes", "left").forEach((list, key) -> {
            List<JsonNode> things = book.data().required(list).valueStream().toList();
            assertTrue(things.size() > 5, list);
            for (JsonNode thing : things) {
                Element row = shelf.select("tr:has(th a[href=" + list + "/" + text(thing, "id") + ".html])").first();
                assertTrue(row != null, text(thing, "id"));
                String left = row.select("td").get(0).text();
                if (thing.required(key).isNull()) {
                    assertTrue(left.startsWith("not known") && !row.select("th li").isEmpty(), row.text());
                } else {
                    ShownFigure.of(left).agreesWith(thing.required(key), text(thing, "id"));
                    String unit = list.equals("lots") ? "g" : text(thing, "left_unit");
                    assertEquals(unit, ShownFigure.of(left).unit().toLowerCase(Locale.ROOT));
                }
            }
        });
    }

    /** The grade before its words. */
    private static String grade(String shown) {
        return shown.split("[:,]")[0];
    }

    @ParameterizedTest
    @EnumSource
    void an_entry_shows_what_the_light_did(Edition edition) {
        onEveryEntry(edition, (sheet, entry) -> {
            List<Element> shown = sheet.facts("Since then").stream()
                    .filter(fact -> fact.select("dt").text().startsWith("In the light for"))
                    .toList();
            JsonNode window = entry.required("window");
            assertEquals(window.size(), shown.size(), sheet.name());
            for (int i = 0; i < shown.size(); i++) {
                JsonNode faded = window.required(i).required("de00");
                String words = shown.get(i).select("dd").text();
                assertEquals(!faded.isNull(), words.contains("ΔE00"), words);
                if (!faded.isNull()) {
                    ShownFigure.ofDifference(words.substring(words.indexOf("ΔE00"))).agreesWith(faded, sheet.name());
                }
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void an_entry_shows_its_needles(Edition edition) {
        onEveryEntry(edition, (sheet, entry) -> {
            JsonNode needles = entry.required("needles");
            sheet.figure("The needles", "Weight", needles.required("weight_g"), "g");
            sheet.shows("The needles", "Species", text(needles, "species"));
            sheet.leads("The needles", "Needle lot", "../lots/", text(needles, "lot"));
            sheet.leads("The needles", "Condition", "../conditions/", text(needles, "condition"));
            sheet.leads("The needles", "Dyed before as", "../entries/", text(needles, "from"));
        });
    }

    @ParameterizedTest
    @EnumSource
    void an_entry_shows_its_bath_its_presoak_and_its_heat(Edition edition) {
        onEveryEntry(edition, FiguresTest::recipeAgrees);
    }

    @ParameterizedTest
    @EnumSource
    void a_method_shows_its_bath_its_presoak_and_its_heat(Edition edition) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        List<JsonNode> methods = book.data().required("methods").valueStream()
                .filter(method -> method.has("bath"))
                .toList();
        assertTrue(methods.size() > 2, "the demo shows methods in the edition " + edition.word());
        assertAll(methods.stream().map(method -> () -> {
            String name = text(method, "id");
            recipeAgrees(new Sheet(name, book.page("methods/" + name + ".html")), method);
        }));
    }

    private static void recipeAgrees(Sheet sheet, JsonNode thing) {
        JsonNode bath = thing.required("bath");
        sheet.figure("Bath", "Water", bath.required("water_ml"), "mL");
        sheet.figure("Bath", "Liquor", bath.required("liquor_ml"), "mL");
        sheet.figure("Bath", "Liquor ratio", bath.required("ratio"), "mL/g");
        JsonNode ph = bath.required("ph_measured");
        String shownPh = sheet.fact("Bath", "pH");
        assertEquals(ph.isNull(), shownPh.isEmpty(), sheet.name());
        if (!ph.isNull()) {
            assertEquals(0, new BigDecimal(shownPh.split(",")[0]).compareTo(ph.decimalValue()), sheet.name());
        }
        sheet.parts(
                "Bath",
                Stream.concat(bath.required("dye").valueStream(), bath.required("assistants").valueStream())
                        .toList());
        JsonNode presoak = thing.required("presoak");
        if (!presoak.isNull()) {
            JsonNode water = presoak.required("water_ml");
            JsonNode liquor = presoak.required("liquor_ml");
            sheet.figure("Presoak", "Water", water, "mL");
            if (!sheet.fact("Presoak", "Liquor").isEmpty() || !liquor.equals(water)) {
                sheet.figure("Presoak", "Liquor", liquor, "mL");
            }
            sheet.parts("Presoak", presoak.required("with").valueStream().toList());
        }
        JsonNode heat = thing.required("heat");
        sheet.figure("Heat", "Heated in all", heat.required("minutes_total"), "min");
        sheet.figure("Heat", "Above 80 °C", heat.required("minutes_above_80c"), "min");
        sheet.figure("Heat", "Hottest", heat.required("peak_c"), "°C");
    }

    private static void onEveryEntry(Edition edition, BiConsumer<Sheet, JsonNode> check) {
        PublishedBook book = PublishedBook.ofTheDemo(edition);
        List<JsonNode> entries = book.data().required("entries").valueStream().toList();
        assertTrue(entries.size() > 20, "the demo has entries");
        assertAll(entries.stream().map(entry -> () -> {
            String id = text(entry, "id");
            check.accept(new Sheet(id, book.page(book.addressOf(id))), entry);
        }));
    }

    private static String text(JsonNode node, String name) {
        return node.path(name).isString() ? node.path(name).asString() : "";
    }

    /** One page, asked by the words that stand on it. */
    private record Sheet(String name, Document page) {

        private static final Map<String, String> CELLS =
                Map.of("Mass", "g", "Volume", "ml", "owf", "owf_percent", "In the liquor", "g_per_l");
        private static final Map<String, String> UNITS =
                Map.of("Mass", "g", "Volume", "mL", "owf", "%", "In the liquor", "g/L");

        /** The facts right under a heading, not those of the steps within. */
        List<Element> facts(String heading) {
            return page.select("main section").stream()
                    .filter(section -> section.select("> h2, > h3").stream()
                            .anyMatch(title -> title.ownText().strip().equals(heading)))
                    .flatMap(section -> section.select("> dl > div, > .mounted > dl > div").stream())
                    .toList();
        }

        /** A fact without the words that say where it comes from; empty where it is not told. */
        String fact(String heading, String label) {
            List<String> found = facts(heading).stream()
                    .filter(fact -> fact.select("dt").text().equals(label))
                    .map(fact -> String.join(", ", fact.select("dd bdi").eachText()))
                    .toList();
            assertTrue(found.size() <= 1, name + ": more than one " + label + " under " + heading);
            return found.isEmpty() ? "" : found.get(0);
        }

        void shows(String heading, String label, String words) {
            assertEquals(words, fact(heading, label), name + ": " + label);
        }

        void leads(String heading, String label, String folder, String id) {
            String way = facts(heading).stream()
                    .filter(fact -> fact.select("dt").text().equals(label))
                    .map(fact -> fact.select("dd a").attr("href"))
                    .findFirst()
                    .orElse("");
            assertEquals(id.isEmpty() ? "" : folder + id + ".html", way, name + ": " + label);
        }

        void figure(String heading, String label, JsonNode datum, String unit) {
            String where = name + ": " + heading + ", " + label;
            String text = fact(heading, label);
            if (datum.isNull()) {
                assertEquals("", text, where);
                return;
            }
            ShownFigure shown = ShownFigure.of(text);
            assertEquals(unit, shown.unit(), where);
            shown.agreesWith(datum, where);
            shown.isFineEnoughFor(datum, where);
        }

        /** A figure, or why it is not known and which line of the notebook would tell. */
        void figureOrWhy(String heading, String label, JsonNode datum, String unit) {
            if (datum.isNull()) {
                assertTrue(fact(heading, label).matches("not known.* To know it: .*\\.(md|yaml):[0-9]+: .*"),
                        name + ": " + fact(heading, label));
            } else {
                figure(heading, label, datum, unit);
            }
        }

        /** A sum in euros and cents, or why it is not known. */
        void moneyOrWhy(String heading, String label, JsonNode datum) {
            String text = fact(heading, label);
            if (datum.isNull() || text.startsWith("less than EUR")) {
                assertTrue(!datum.isNull() && datum.asDouble() < 0.005 || text.contains(" To know it: "), name + ": " + text);
            } else {
                String[] shown = text.replace("about ", "").split("\u202f");
                assertEquals("EUR", shown[0], name);
                ShownFigure.of(shown[1]).agreesWith(datum, name + ": " + label);
            }
        }

        void difference(String heading, String label, JsonNode datum) {
            String text = fact(heading, label);
            if (datum.isNull()) {
                assertEquals("", text, name + ": " + label);
            } else {
                ShownFigure.ofDifference(text).agreesWith(datum, name + ": " + label);
            }
        }

        /** The table of a step holds these parts and no more, in this order. */
        void parts(String heading, List<JsonNode> parts) {
            List<Element> sections = page.select("main section.step").stream()
                    .filter(step -> step.select("> h3").stream()
                            .anyMatch(title -> title.ownText().strip().equals(heading)))
                    .toList();
            List<Element> rows = sections.stream().flatMap(step -> step.select("tbody tr").stream()).toList();
            List<String> columns = sections.stream()
                    .flatMap(step -> step.select("thead th").stream())
                    .map(Element::text)
                    .toList();
            assertEquals(parts.size(), rows.size(), name + ": parts of " + heading);
            for (int i = 0; i < parts.size(); i++) {
                part(heading, columns, rows.get(i), parts.get(i));
            }
        }

        private void part(String heading, List<String> columns, Element row, JsonNode part) {
            String is = text(part, "is");
            assertEquals("../dyes/" + is + ".html", row.select("th a").attr("href"), name + ": " + heading);
            List<Element> cells = new ArrayList<>(row.select("> th, > td"));
            boolean spooned = row.select("th .remark").text().contains("spooned");
            assertEquals(text(part, "as_written"), cells.get(columns.indexOf("As written")).text(), name);
            String follows = cells.get(columns.indexOf("Follows")).text();
            assertEquals(text(part, "by"), follows.equals("neither") ? "batch" : follows, name);
            CELLS.forEach((column, key) -> {
                String where = name + ": " + heading + ", " + is + ", " + column;
                Element cell = cells.get(columns.indexOf(column));
                JsonNode datum = part.required(key);
                assertEquals(datum.isNull(), cell.select(".unknown").size() == 1, where);
                if (datum.isNull()) {
                    return;
                }
                ShownFigure shown = ShownFigure.of(cell.text());
                assertEquals(UNITS.get(column), shown.unit(), where);
                shown.agreesWith(datum, where);
                shown.isFineEnoughFor(datum, where);
                boolean rough = part.required("about").asBoolean() || spooned;
                if (column.equals("Mass") || column.equals("Volume")) {
                    // An amount weighed exactly stays exact, though its share of a rough weight is rough.
                    assertTrue(rough || !shown.about(), where + ": about");
                } else {
                    assertEquals(rough, shown.about(), where + ": about");
                }
            });
        }
    }
}
