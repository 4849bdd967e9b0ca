package fascicle.book;

import fascicle.book.calendar.Calendar;
import fascicle.book.calendar.ScheduledEvents;
import fascicle.book.compose.PlanComposer;
import fascicle.book.data.PlanJson;
import fascicle.book.gist.Doings;
import fascicle.book.page.PlanPage;
import fascicle.book.page.Scaling;
import fascicle.book.theme.Theme;
import fascicle.book.words.Words;
import fascicle.notebook.Dye;
import fascicle.notebook.Ids;
import fascicle.notebook.Notebook;
import fascicle.notebook.Today;
import fascicle.workings.Workings;
import fascicle.workings.plan.DayPlan;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A planned day in all its forms: lines for the terminal, data, and files to open, print and take along. */
public final class Plan {

    private final Workings workings;
    private final DayPlan plan;
    private final Words words = Words.shipped();
    private final Doings doings;

    /**
     * A file of a plan.
     *
     * @param address relative to the plan's folder
     * @param bytes what is in it
     */
    public record File(String address, byte[] bytes) {}

    /**
     * A planned day.
     *
     * @param workings what it was planned from
     * @param plan the plan
     */
    public Plan(Workings workings, DayPlan plan) {
        this.workings = workings;
        this.plan = plan;
        Map<String, Dye> dyes = Notebook.byId(workings.notebook().dyes(), Dye::id);
        Doings told = new Doings(words, id -> Optional.ofNullable(dyes.get(Ids.key(id))).map(Dye::called).orElse(id));
        this.doings = plan.ask().minors() ? told.forMinors() : told;
    }

    /**
     * The plan as data.
     *
     * @return JSON
     */
    public String data() {
        return PlanJson.of(plan, workings, words, doings);
    }

    /**
     * The plan's files: the sheet, the slips, their style, the data, and a calendar where the start is known.
     *
     * @param theme how the pages look
     * @return the files
     */
    public List<File> files(Theme theme) {
        PlanComposer composer = new PlanComposer(workings, plan, words, doings, theme.styleAddress());
        List<File> files = new ArrayList<>();
        files.add(new File("plan.html", theme.render(composer.sheet())));
        files.add(new File("slip.html", theme.render(composer.slips())));
        files.add(new File("plan.json", utf8(data() + "\n")));
        files.add(new File(theme.styleAddress(), theme.style()));
        theme.besideStyle().forEach(address -> files.add(new File(address, theme.fileBesideStyle(address))));
        plan.ask().start().ifPresent(start -> files.add(new File("plan.ics", utf8(Calendar.of(
                ScheduledEvents.of(plan.schedule(), this::pot, doings, named(start.toLocalDate())),
                stamp(start.toLocalDate()))))));
        return files;
    }

    /** A pot's letter, and what is in it: a phone shows no legend. */
    private String pot(String name) {
        return plan.batches().stream().filter(batch -> batch.potNames().contains(name)).findFirst()
                .map(batch -> words.say("plan.lettered", name, batch.chosen().called())).orElse(name);
    }

    /** What makes this plan's events others than those of another day or of other methods. */
    private String named(LocalDate day) {
        return workings.notebook().cover().title() + "\n" + day + "\n" + plan.batches().stream()
                .map(batch -> batch.chosen().id()).collect(Collectors.joining("\n"));
    }

    /**
     * What the calendar says it was written at: the notebook's newest day, since the same plan gives the same bytes.
     */
    private Instant stamp(LocalDate start) {
        return Today.of(workings.notebook()).orElse(start).atStartOfDay(ZoneOffset.UTC).toInstant();
    }

    /**
     * The sheet in lines for the terminal.
     *
     * @return the lines
     */
    public List<String> lines() {
        PlanPage sheet = new PlanComposer(workings, plan, words, doings, "").sheet();
        List<String> lines = new ArrayList<>();
        lines.add(sheet.frame().title());
        sheet.said().forEach(said -> lines.add("  " + said));
        list(lines, words.say("plan.heading-refused"), sheet.refused());
        list(lines, words.say("plan.heading-lay-out"), sheet.layOut());
        sheet.methods().forEach(method -> measured(lines, method));
        list(lines, words.say("plan.heading-shelf"), sheet.needs().stream().map(this::need).toList());
        list(lines, words.say("plan.heading-duties"), sheet.duties());
        list(lines, sheet.clockHeading(), sheet.clock().stream().map(due -> due.when() + "  " + due.pot() + ": "
                + due.doing() + due.length().map(length -> " (" + length + ")").orElse("")).toList());
        sheet.clockNotes().forEach(note -> lines.add("  " + note));
        list(lines, words.say("heading.caution"), sheet.cautions());
        return lines;
    }

    private void list(List<String> lines, String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            lines.add(heading);
            sentences.forEach(sentence -> lines.add("  " + sentence));
        }
    }

    private void measured(List<String> lines, PlanPage.Measured method) {
        lines.add(method.title());
        method.pots().forEach(pot -> lines.add("  " + pot));
        for (int column = 0; column < method.columns().size(); column++) {
            lines.add("  " + method.columns().get(column));
            for (Scaling.Row row : method.rows()) {
                List<String> cell = row.cells().get(column);
                lines.add("    " + row.thing() + ": " + (cell.isEmpty() ? words.say("table.unknown")
                        : String.join(words.say("pieces"), cell)));
            }
        }
        method.remarks().forEach(remark -> lines.add("  " + remark));
    }

    private String need(PlanPage.Need need) {
        List<String> said = new ArrayList<>();
        said.add(said(need.needed(), "plan.need", "plan.need-unknown"));
        said.add(said(need.left(), "plan.there-is", "plan.there-is-unknown"));
        if (!isUnknown(need.after())) {
            said.add(words.say("plan.left-after", need.after()));
        }
        need.tooLittle().ifPresent(said::add);
        return words.say("plan.amount", need.thing(), String.join(words.say("pieces"), said));
    }

    private String said(String amount, String known, String unknown) {
        return isUnknown(amount) ? words.say(unknown) : words.say(known, amount);
    }

    private boolean isUnknown(String amount) {
        return amount.equals(words.say("table.unknown"));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
