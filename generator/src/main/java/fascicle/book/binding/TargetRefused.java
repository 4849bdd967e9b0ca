package fascicle.book.binding;

/**
 * The target folder cannot be taken for this book: the call is wrong, not the disk. The message is one
 * plain sentence for the maker which says what is wrong and what to do. Nothing has been changed.
 */
public final class TargetRefused extends Exception {
  private static final long serialVersionUID = 1L;

  TargetRefused(String sentence) {
    super(sentence);
  }
}
