package noctuary.fits;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the first image with pixels and checks that the file can hold what it claims. */
final class ImageFinder {
    /** No compression of a real frame comes near this; a claim beyond it is refused before anything is allocated. */
    private static final long MOST_COMPRESSION = 10_000;

    private static final long MOST_UNCHECKED = 1 << 20;

    private ImageFinder() {}

    /** @param cards of the image, with those inherited from the primary header */
    record Found(Hdu unit, List<Card> cards, List<FrameHeader.Oddity> oddities) {}

    static Found find(ByteSource source) throws IOException, UnreadableException {
        HduScanner scanner = new HduScanner(source);
        Hdu primary = scanner.next().orElseThrow(() -> Gate.notFits(""));
        List<FrameHeader.Oddity> oddities = new ArrayList<>(primary.oddities());
        int units = 1;
        Optional<Hdu> unit = Optional.of(primary);
        while (unit.isPresent() && !unit.get().structure().isImage()) {
            source.skip(unit.get().paddedBytes());
            unit = scanner.next();
            units++;
            unit.ifPresent(found -> oddities.addAll(found.oddities()));
        }
        if (unit.isEmpty()) {
            throw noImage(primary, units - 1);
        }
        checkClaim(unit.get().structure(), source);
        return new Found(unit.get(), Inheritance.merge(unit.get(), primary), oddities);
    }

    private static UnreadableException noImage(Hdu primary, int units) {
        String what = units > 1
                ? "holds no image: none of its " + units + " units has pixels in two dimensions"
                : "holds no image: its header declares no pixels in two dimensions";
        return new UnreadableException(what, "leave it out; tables and spectra are not frames");
    }

    private static void checkClaim(Structure claim, ByteSource source) throws IOException, UnreadableException {
        long there = source.remaining();
        if (claim.dataBytes() > there) {
            throw source.isPlain() ? truncated(claim, there) : absurd(claim);
        }
        if (claim.tiled()) {
            long bytes = multiply(claim.pixels(), Math.abs(claim.bitpix()) / 8);
            if (bytes > MOST_UNCHECKED && bytes / MOST_COMPRESSION > claim.dataBytes()) {
                throw absurd(claim);
            }
        }
        long needed = memory(claim);
        if (needed > Runtime.getRuntime().maxMemory()) {
            throw tooLarge(needed);
        }
    }

    private static long memory(Structure claim) {
        long stored = claim.tiled() ? Math.abs(claim.bitpix()) / 8 : 0;
        long kept = claim.bitpix() == 8 || claim.bitpix() == 16 ? Short.BYTES : Float.BYTES;
        return multiply(claim.pixels(), stored + kept);
    }

    private static long multiply(long a, long b) {
        return Math.multiplyHigh(a, b) != 0 || a * b < 0 ? Long.MAX_VALUE : a * b;
    }

    static UnreadableException tooLarge(long bytes) {
        return new UnreadableException(
                "is too large for the memory Java has: it needs about " + (bytes >> 20) + " MB",
                "give Java more with -Xmx");
    }

    static UnreadableException truncated(Structure claim, long there) {
        long percent = (long) (100.0 * there / claim.dataBytes());
        return new UnreadableException(
                "is cut short: its header claims " + size(claim) + ", " + claim.dataBytes() + " bytes, and " + there
                        + " are there (" + percent + " %)",
                Hdu.COPY_AGAIN);
    }

    private static UnreadableException absurd(Structure claim) {
        return new UnreadableException(
                "claims " + size(claim) + ", more than a file of its length can hold", Hdu.COPY_AGAIN);
    }

    private static String size(Structure claim) {
        StringBuilder size = new StringBuilder();
        for (long axis : claim.axes()) {
            size.append(size.length() == 0 ? "" : " x ").append(axis);
        }
        return size + " pixels";
    }
}
