package fascicle.workings.plan;

import fascicle.bath.Magnitude;

/**
 * Needles that had been dyed before, for an entry that dyed such ones again.
 *
 * @param letter the letter of that entry in the plan
 * @param of the id of the entry that dyed them first
 * @param called its title, or its id where it is not there
 * @param grams of them
 * @param left what is left of the first entry's bundle, g
 */
public record DyedNeed(String letter, String of, String called, double grams, Magnitude left) {}
