package fascicle.book.compose;

import fascicle.book.address.Shelf;
import fascicle.book.batch.StepNames;
import fascicle.book.gist.Amounts;
import fascicle.book.gist.Heating;
import fascicle.book.page.Departed;
import fascicle.book.words.Words;
import fascicle.notebook.Noted;
import fascicle.notebook.Part;
import fascicle.notebook.Recipe;
import fascicle.notebook.Vessel;
import fascicle.notebook.Water;
import fascicle.workings.Departure;
import fascicle.workings.EntryWorking;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Where a pot went another way than its method, in words. */
final class DepartureComposer {

    private final Materials materials;
    private final Ways ways;
    private final Words words;
    private final Heating heating;

    DepartureComposer(Materials materials, Ways ways) {
        this.materials = materials;
        this.ways = ways;
        this.words = materials.words();
        this.heating = new Heating(materials.words());
    }

    /** An entry's departures; nothing where it has no method to depart from. */
    Optional<Departed> of(EntryWorking working) {
        return materials.workings().departures(working).flatMap(departures -> working.entry().method()
                .map(method -> new Departed(ways.to(Shelf.METHODS, method.value()),
                        departures.stream().map(this::row).toList())));
    }

    private Departed.Row row(Departure departure) {
        if (departure instanceof Departure.InPart part) {
            String what = part.here().or(part::method).orElseThrow().part().called();
            return row(within(what, part.step()), part.here().map(this::amount), part.method().map(this::amount));
        } else if (departure instanceof Departure.InTreatment other) {
            String what = StepNames.treatment(other.here().or(other::method).orElseThrow().as()
                    .map(as -> as.value().word()), words);
            return row(what, other.here().map(this::treatment), other.method().map(this::treatment));
        } else if (departure instanceof Departure.InVessel vessel) {
            return row("fact.vessel", vessel(vessel.here()), vessel(vessel.method()));
        } else if (departure instanceof Departure.InLiquor liquor) {
            return row("fact.ratio", liquor(liquor.here(), liquor.hereRatio()),
                    liquor(liquor.method(), liquor.methodRatio()));
        } else if (departure instanceof Departure.InHeat heat) {
            return row(words.say("step.heat"), heating.steps(heat.here()), heating.steps(heat.method()));
        } else if (departure instanceof Departure.InTime time) {
            return row(timed(time.step()), heating.span(time.here()), heating.span(time.method()));
        } else if (departure instanceof Departure.Presoaked soaked) {
            return row(words.say("step.presoak"), Optional.of(presoak(soaked.here())), Optional.empty());
        }
        Departure.InRinse rinse = (Departure.InRinse) departure;
        return row("fact.rinse", words.name("rinse", rinse.here()), words.name("rinse", rinse.method()));
    }

    private Departed.Row row(String key, String here, String method) {
        return new Departed.Row(words.say(key), here, method);
    }

    private Departed.Row row(String what, Optional<String> here, Optional<String> method) {
        return new Departed.Row(what, here.orElseGet(() -> words.say("departed.left-out")),
                method.orElseGet(() -> words.say("departed.none")));
    }

    private static String timed(Departure.Step step) {
        return switch (step) {
            case COOL -> "fact.cool";
            case DRY -> "fact.dry";
            default -> "departed.soaked";
        };
    }

    private String within(String thing, Departure.Step step) {
        return switch (step) {
            case PRESOAK -> words.say("scaling.in", thing, words.say("step.presoak"));
            case FINISH -> words.say("scaling.in", thing, words.say("step.finish"));
            default -> thing;
        };
    }

    private String amount(Departure.Used used) {
        return new Amounts(words).inTheBath(used.part(), used.liquorMl())
                .orElseGet(() -> words.say("departed.some"));
    }

    private String treatment(Recipe.Treatment treatment) {
        List<String> pieces = parts(treatment.with());
        heating.steps(treatment.heat()).ifPresent(pieces::add);
        return pieces.isEmpty() ? words.say("departed.some") : String.join(words.say("pieces"), pieces);
    }

    private String presoak(Recipe.Presoak bin) {
        List<String> pieces = parts(bin.with());
        bin.time().ifPresent(time -> pieces.add(heating.span(time)));
        return pieces.isEmpty() ? words.say("departed.some") : String.join(words.say("pieces"), pieces);
    }

    private List<String> parts(List<Part> parts) {
        return parts.stream().map(part -> {
            String called = ways.to(Shelf.DYES, part.is().value()).text();
            return part.amount().map(Noted::written).map(amount -> words.say("gist.part", called, amount))
                    .orElse(called);
        }).collect(Collectors.toCollection(ArrayList::new));
    }

    private String vessel(String id) {
        return materials.index().vessel(id).map(Vessel::called).orElse(id);
    }

    private String liquor(Noted<Water> water, OptionalDouble ratio) {
        String written = new RecipeComposer(materials, ways).waterFixed(water);
        Optional<String> figure = materials.figures().amount(ratio, "ratio", false);
        if (water.value() instanceof Water.ByRatio && figure.isPresent()) {
            return figure.get();
        }
        return figure.map(known -> words.say("amount.rate", known, written)).orElse(written);
    }
}
