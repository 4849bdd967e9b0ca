package fascicle.workings.acidity;

import fascicle.bath.Acidity;
import fascicle.bath.Dissolved;
import java.util.Optional;
import java.util.OptionalDouble;

/** What decides a bath's acidity, or why that is not known. */
sealed interface Content {

    /** All of it, in so many litres. */
    record Known(Dissolved dissolved, double litres) implements Content {}

    /** Something is not known, or not reckoned with. */
    record Unknown(AcidityFigures.Why why) implements Content {}

    static Content unknown(AcidityFigures.Kind kind) {
        return new Unknown(AcidityFigures.Why.of(kind));
    }

    /** The acidity it comes to. */
    default AcidityFigures figures() {
        if (this instanceof Known known) {
            Acidity acidity = Acidity.of(known.dissolved(), known.litres());
            return new AcidityFigures(OptionalDouble.of(acidity.cold()), OptionalDouble.of(acidity.heated()),
                    Optional.empty());
        }
        return AcidityFigures.unknown(((Unknown) this).why());
    }
}
