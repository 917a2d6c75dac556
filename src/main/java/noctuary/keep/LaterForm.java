package noctuary.keep;

/** Stands for a form that is still being found, because a record may hold others of its kind. */
final class LaterForm implements Form {
    private Form form;

    void is(Form now) {
        form = now;
    }

    Form found() {
        return form;
    }

    @Override
    public void write(Object value, PackedOut out) {
        form.write(value, out);
    }

    @Override
    public Object read(PackedIn in) {
        return form.read(in);
    }
}
