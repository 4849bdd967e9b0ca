package fascicle.notebook;

import java.time.LocalDate;
import java.util.List;

/**
 * What a maker wrote of a dye day as a whole, beside its pots.
 *
 * @param date the day
 * @param notes words that belong to no single pot
 */
public record Day(LocalDate date, List<Note> notes) {}
