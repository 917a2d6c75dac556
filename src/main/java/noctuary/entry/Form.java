package noctuary.entry;

/** How one kind of value is typed. */
@FunctionalInterface
interface Form<T> {
    /** @param text stripped, not empty */
    T of(String text) throws Unfit;
}
