package noctuary.image;

/** What the samples of a TIFF file mean (tag 262; TIFF 6.0, sections 4 to 6, 16 and 21). */
enum TiffColours {
    WHITE_IS_ZERO(1),
    GREY(1),
    RGB(3),
    PALETTE(1),
    INKS(4),
    LUMA(3);

    private final int samples;

    TiffColours(int samples) {
        this.samples = samples;
    }

    /** Samples of a pixel that are colour. */
    int samples() {
        return samples;
    }

    /** @param inkSet tag 332: 1 are cyan, magenta, yellow and black */
    static TiffColours of(long photometric, int samples, long inkSet) throws UnreadablePictureException {
        TiffColours found = switch ((int) photometric) {
            case 0 -> WHITE_IS_ZERO;
            case 1 -> GREY;
            case 2 -> RGB;
            case 3 -> PALETTE;
            case 5 -> INKS;
            case 6 -> LUMA;
            default ->
                throw new UnreadablePictureException(
                        "the picture is neither grey nor RGB (its kind of colours is " + photometric + ")",
                        "save it as RGB");
        };
        if (samples < found.samples || found == INKS && inkSet != 1) {
            throw new UnreadablePictureException(
                    found == INKS
                            ? "the picture is made of other inks than cyan, magenta, yellow and black"
                            : "the picture has too few samples a pixel for its colours",
                    "save it as RGB");
        }
        return found;
    }
}
