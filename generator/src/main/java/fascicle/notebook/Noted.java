package fascicle.notebook;

import java.util.function.Function;

/**
 * A value as the maker noted it.
 *
 * @param <T> what the value is
 * @param value what was understood
 * @param written the text as it stands in the notebook
 * @param place where it stands
 * @param origin whose it is
 */
public record Noted<T>(T value, String written, Place place, Origin origin) {

    /**
     * The same note with another value.
     *
     * @param <S> what the new value is
     * @param change makes the new value
     * @return a note at the same place
     */
    public <S> Noted<S> map(Function<T, S> change) {
        return new Noted<>(change.apply(value), written, place, origin);
    }
}
