package noctuary.fits;

/** A value and the card (keyword and text as written) that said it. */
public record Cited<T>(T value, String card, String text) {}
