package fascicle.workings;

import fascicle.notebook.NeedleLot;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The needles of an entry.
 *
 * @param lot the lot they are of; for an over-dye the lot of the needles that were dyed first
 * @param condition the id of the lot's condition
 * @param species the lot's species
 * @param grams their weight as weighed
 * @param dryGrams their dry weight: the weight as weighed where that was dry or guessed, else unknown
 * @param about whether the weight is a rough one (written so, guessed, or counted in bundles)
 */
public record NeedleFigures(Optional<NeedleLot> lot, Optional<String> condition, Optional<String> species,
        OptionalDouble grams, OptionalDouble dryGrams, boolean about) {}
