package noctuary.keep;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** Numbers, texts, dates. */
final class PlainForms {
    static final Map<Class<?>, Form> ALL = all();

    private PlainForms() {}

    private static Map<Class<?>, Form> all() {
        Map<Class<?>, Form> forms = new HashMap<>();
        Form real = form(Double.class, (v, out) -> out.whole(Double.doubleToRawLongBits(v)), PlainForms::real);
        Form integer = form(Integer.class, (v, out) -> out.count(v), PackedIn::count);
        Form longer = form(Long.class, (v, out) -> out.whole(v), PackedIn::whole);
        Form flag = form(Boolean.class, (v, out) -> out.octet(v ? 1 : 0), in -> in.octet() == 1);
        forms.put(double.class, real);
        forms.put(Double.class, real);
        forms.put(int.class, integer);
        forms.put(Integer.class, integer);
        forms.put(long.class, longer);
        forms.put(Long.class, longer);
        forms.put(boolean.class, flag);
        forms.put(Boolean.class, flag);
        forms.put(String.class, form(String.class, (v, out) -> out.text(v), PackedIn::text));
        forms.put(OptionalDouble.class, form(OptionalDouble.class, PlainForms::write, PlainForms::maybeReal));
        forms.put(OptionalInt.class, form(OptionalInt.class, PlainForms::write, PlainForms::maybeInteger));
        forms.put(Path.class, form(Path.class, (v, out) -> out.text(v.toString()), in -> Path.of(in.text())));
        forms.put(Instant.class, form(Instant.class, PlainForms::write, PlainForms::instant));
        forms.put(
                LocalDate.class,
                form(LocalDate.class, (v, out) -> out.whole(v.toEpochDay()), in -> LocalDate.ofEpochDay(in.whole())));
        forms.put(
                BigDecimal.class,
                form(BigDecimal.class, (v, out) -> out.text(v.toString()), in -> new BigDecimal(in.text())));
        return Map.copyOf(forms);
    }

    private static <T> Form form(Class<T> type, BiConsumer<T, PackedOut> write, Function<PackedIn, T> read) {
        return new Form() {
            @Override
            public void write(Object value, PackedOut out) {
                write.accept(type.cast(value), out);
            }

            @Override
            public Object read(PackedIn in) {
                return read.apply(in);
            }
        };
    }

    private static double real(PackedIn in) {
        return Double.longBitsToDouble(in.whole());
    }

    private static void write(OptionalDouble value, PackedOut out) {
        out.octet(value.isPresent() ? 1 : 0);
        value.ifPresent(v -> out.whole(Double.doubleToRawLongBits(v)));
    }

    private static OptionalDouble maybeReal(PackedIn in) {
        return in.octet() == 0 ? OptionalDouble.empty() : OptionalDouble.of(real(in));
    }

    private static void write(OptionalInt value, PackedOut out) {
        out.octet(value.isPresent() ? 1 : 0);
        value.ifPresent(out::count);
    }

    private static OptionalInt maybeInteger(PackedIn in) {
        return in.octet() == 0 ? OptionalInt.empty() : OptionalInt.of(in.count());
    }

    private static void write(Instant value, PackedOut out) {
        out.whole(value.getEpochSecond());
        out.count(value.getNano());
    }

    private static Instant instant(PackedIn in) {
        return Instant.ofEpochSecond(in.whole(), in.count());
    }
}
