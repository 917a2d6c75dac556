package noctuary.keep;

import java.util.List;

/** One of a closed family of records: which, then that one. */
final class KindForm implements Form {
    private final List<Class<?>> kinds;
    private final Form[] forms;

    KindForm(List<Class<?>> kinds, List<Form> forms) {
        this.kinds = List.copyOf(kinds);
        this.forms = forms.toArray(Form[]::new);
    }

    @Override
    public void write(Object value, PackedOut out) {
        int kind = kinds.indexOf(value.getClass());
        out.octet(kind);
        forms[kind].write(value, out);
    }

    @Override
    public Object read(PackedIn in) {
        int kind = in.octet();
        if (kind >= forms.length) {
            throw new DamagedException();
        }
        return forms[kind].read(in);
    }
}
