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
}
