package noctuary.stars;

/** A star and, where it was fitted, its shape with errors. */
record MeasuredStar(Star star, Shape shape) {
    boolean counts() {
        return shape != null && star.measured();
    }
}
