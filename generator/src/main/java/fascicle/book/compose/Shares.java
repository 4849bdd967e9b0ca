package fascicle.book.compose;

import fascicle.book.figures.Figures;
import fascicle.book.words.Words;
import fascicle.workings.Group;
import fascicle.workings.Share;
import java.util.Optional;

/** On how many dye days something worked, in words; never a bare percentage. */
final class Shares {

    private final Words words;

    Shares(Words words) {
        this.words = words;
    }

    /** Such as {@code on 6 of 8 days; likely between 4 and 9 in ten}. */
    String of(Group.VerdictDays days) {
        return days.share().map(share -> words.say("share", counted(share, days), likely(share)))
                .orElseGet(() -> words.say("share.none"));
    }

    /** The same as a sentence; nothing where no day has a verdict. */
    Optional<String> sentence(Group.VerdictDays days) {
        return days.share().map(share -> words.say("share.sentence", of(days)));
    }

    private String counted(Share share, Group.VerdictDays days) {
        boolean all = days.judged() == days.all();
        return words.say(all ? "share.days" : "share.judged", share.of(), share.worked());
    }

    private String likely(Share share) {
        String low = Figures.fixed(share.low() * 10, 0);
        String high = Figures.fixed(share.high() * 10, 0);
        return low.equals(high) ? words.say("share.about", low) : words.say("share.between", low, high);
    }
}
