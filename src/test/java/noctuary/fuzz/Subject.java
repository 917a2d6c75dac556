package noctuary.fuzz;

/** One kind of input on its way through the rooms that read it. */
interface Subject {
    String name();

    /**
     * Makes the inputs of this seed and reads them.
     *
     * @return how many inputs that was
     * @throws Throwable what a reader let through: a finding
     */
    int attack(long seed) throws Throwable;

    /**
     * Looks at what the last attack left, by means that are not the program's and whose time does not count.
     *
     * @throws Throwable a finding
     */
    default void judge(long seed) throws Throwable {}
}
