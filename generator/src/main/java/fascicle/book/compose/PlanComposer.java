package fascicle.book.compose;

import fascicle.book.gist.Doings;
import fascicle.book.page.Frame;
import fascicle.book.page.PlanPage;
import fascicle.book.page.SlipPage;
import fascicle.book.words.Words;
import fascicle.notebook.Cover;
import fascicle.workings.Workings;
import fascicle.workings.plan.DayPlan;
import java.util.List;

/** The pages of a planned day: one sheet, and a slip for each pot. */
public final class PlanComposer {

    private final Workings workings;
    private final DayPlan plan;
    private final Words words;
    private final PlannedHours hours;
    private final String style;

    /**
     * Composes the pages of a plan.
     *
     * @param workings what was planned from
     * @param plan the plan
     * @param words the book's words
     * @param doings stages in words
     * @param style the address of the style
     */
    public PlanComposer(Workings workings, DayPlan plan, Words words, Doings doings, String style) {
        this.workings = workings;
        this.plan = plan;
        this.words = words;
        this.hours = new PlannedHours(plan, words, doings);
        this.style = style;
    }

    /**
     * The sheet.
     *
     * @return what it says
     */
    public PlanPage sheet() {
        return new SheetComposer(workings, plan, words, hours).sheet(frame("plan.title"));
    }

    /**
     * The slips.
     *
     * @return what they say
     */
    public SlipPage slips() {
        return new SlipPage(frame("plan.slips"),
                new SlipComposer(plan, workings.measuring(), words, hours).slips());
    }

    private Frame frame(String title) {
        Cover cover = workings.notebook().cover();
        return new Frame(cover.language(), words.say(title), cover.title(), words.say("plan.title"), "plan.html",
                "slip.html", style, "", List.of(), List.of());
    }
}
