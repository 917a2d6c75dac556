package noctuary.stats;

/** What a sum over the after side falls short by under other labels of before and after, and how many labels moved. */
sealed interface Labels permits Relabellings, Halves {
    /** Relabellings, the true labels included. */
    double count();

    /** Whether these are all, not a random selection of them. */
    boolean exact();

    /** No loss is larger in size. */
    double largest();

    /** Of all, those that fall short by at most this. */
    double atMost(double loss);

    /** The value of a rank from 1 among the losses over the labels moved, the true labels left out. */
    double typical(double rank);
}
