package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.page.AboutPage;
import fascicle.book.page.Fact;
import fascicle.book.words.Words;
import fascicle.measure.Dimension;
import fascicle.measure.Kitchen;
import fascicle.measure.Quantity;
import fascicle.measure.Unit;
import fascicle.notebook.Cover;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** The page that says what the figures mean. */
public final class AboutComposer {

    private static final List<String> SECTIONS =
            List.of("made", "figures", "bath", "colour", "photographs", "fastness", "days", "kitchen", "caution");
    private static final List<String> BRIEF = List.of("owf", "ratio", "difference", "unlevelness", "share", "about");
    private static final Set<Unit> OF_EVERY_KITCHEN = Set.of(Unit.MILLILITRE, Unit.LITRE, Unit.DROP);

    private final Materials materials;
    private final Words words;

    /**
     * Composes the page.
     *
     * @param materials what pages are made from
     */
    public AboutComposer(Materials materials) {
        this.materials = materials;
        this.words = materials.words();
    }

    /**
     * The page.
     *
     * @return what it says
     */
    public AboutPage page() {
        Cover cover = materials.workings().notebook().cover();
        List<AboutPage.Section> sections = new ArrayList<>();
        for (String section : SECTIONS) {
            boolean kitchen = section.equals("kitchen");
            List<String> paragraphs = new ArrayList<>();
            if (kitchen) {
                paragraphs.add(words.say(cover.kitchenSaid() ? "kitchen.said" : "kitchen.left-out",
                        words.say("kitchen." + cover.kitchen().key())));
            }
            if (section.equals("photographs")) {
                cover.photoUncertainty().ifPresent(found -> paragraphs.add(
                        words.say("about.photographs.learnt", Figures.atMost(found.value(), 1))));
            }
            paragraphs.addAll(List.of(words.say("about." + section + ".text").split("\\|")));
            sections.add(new AboutPage.Section(words.say("about." + section + ".title"), paragraphs,
                    kitchen ? kitchen(cover.kitchen()) : List.of()));
        }
        return new AboutPage(Ways.fromTop(materials).frame(words.say("about.title")), brief(), sections);
    }

    /** Half a screen for someone who opens the book for the first time. */
    private List<Fact> brief() {
        return BRIEF.stream().map(term -> Fact.of(words.say("brief." + term), words.say("brief." + term + ".text")))
                .toList();
    }

    private List<Fact> kitchen(Kitchen kitchen) {
        return Unit.of(Dimension.VOLUME, kitchen).stream().filter(unit -> !OF_EVERY_KITCHEN.contains(unit))
                .map(unit -> new Quantity(BigFraction.ONE, unit, false))
                .map(measure -> Fact.of(measure.toString(), Figures.atMost(measure.value(), 3) + "\u202f"
                        + words.say("unit.ml")))
                .toList();
    }
}
