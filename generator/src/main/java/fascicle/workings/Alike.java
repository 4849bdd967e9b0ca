package fascicle.workings;

/**
 * An entry whose colour lies near another's.
 *
 * @param entry the entry
 * @param difference CIEDE2000 between the two
 */
public record Alike(EntryWorking entry, double difference) {}
