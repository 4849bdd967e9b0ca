package fascicle.book.page;

/** What one page says. */
public sealed interface Page permits CoverPage, EntriesPage, EntryPage, GroupPage, GroupsPage, AboutPage,
        LookUpPage, GridPage, LaddersPage, RepeatsPage, StringPage, ShelfPage, PlanPage, SlipPage {

    /**
     * What stands round it.
     *
     * @return the frame
     */
    Frame frame();

    /**
     * The template that lays it out.
     *
     * @return the template's file name
     */
    String template();
}
