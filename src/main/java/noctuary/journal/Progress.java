package noctuary.journal;

/** Told how far long work is. */
public interface Progress {
    Progress SILENT = (what, done, total) -> {};

    /** @param what the work in a word or two, such as {@code measuring} */
    void at(String what, int done, int total);

    /** @param files so far that had to be measured now */
    default void measured(int files) {}
}
