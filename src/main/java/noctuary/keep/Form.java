package noctuary.keep;

/** How values of one type stand in bytes. */
interface Form {
    void write(Object value, PackedOut out);

    Object read(PackedIn in);
}
