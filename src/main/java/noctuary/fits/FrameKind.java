package noctuary.fits;

/** What IMAGETYP and its dialects say a file is. UNTOLD: no card says, which in practice means a light or a stack. */
public enum FrameKind {
    LIGHT,
    DARK,
    FLAT,
    BIAS,
    OTHER,
    UNTOLD;

    public boolean isCalibration() {
        return this == DARK || this == FLAT || this == BIAS;
    }
}
