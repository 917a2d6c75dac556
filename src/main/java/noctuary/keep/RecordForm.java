package noctuary.keep;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** A record as its components one after the other. */
final class RecordForm implements Form {
    private final Constructor<?> constructor;
    private final Method[] accessors;
    private final Form[] parts;

    RecordForm(Class<?> type, List<Form> parts) {
        RecordComponent[] components = type.getRecordComponents();
        this.parts = parts.toArray(Form[]::new);
        this.accessors =
                Arrays.stream(components).map(RecordComponent::getAccessor).toArray(Method[]::new);
        try {
            this.constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every record has this constructor", e);
        }
        constructor.setAccessible(true);
        Arrays.stream(accessors).forEach(a -> a.setAccessible(true));
    }

    @Override
    public void write(Object value, PackedOut out) {
        try {
            for (int i = 0; i < parts.length; i++) {
                parts[i].write(accessors[i].invoke(value), out);
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the components of a record can be read", e);
        }
    }

    @Override
    public Object read(PackedIn in) {
        Object[] values = new Object[parts.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = parts[i].read(in);
        }
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            throw new DamagedException();
        }
    }
}
