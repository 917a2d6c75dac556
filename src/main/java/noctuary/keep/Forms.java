package noctuary.keep;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the form of a type from its declaration, and writes down all that it came upon. */
final class Forms {
    private final StringBuilder shape = new StringBuilder();
    private final Map<String, Form> records = new HashMap<>();
    private final boolean gaps;

    /** @param gaps whether a component may be null */
    Forms(boolean gaps) {
        this.gaps = gaps;
    }

    /** Every type and component met so far, in order: other text means other bytes. */
    String shape() {
        return shape.toString();
    }

    /** @param bound what stands for the type variables around */
    Form of(Type type, Map<TypeVariable<?>, Type> bound) {
        if (type instanceof TypeVariable<?> variable) {
            return of(bound.get(variable), Map.of());
        }
        if (type instanceof ParameterizedType parameterized) {
            Type[] arguments = Arrays.stream(parameterized.getActualTypeArguments())
                    .map(a -> a instanceof TypeVariable<?> v ? bound.get(v) : a)
                    .toArray(Type[]::new);
            return generic((Class<?>) parameterized.getRawType(), arguments, bound);
        }
        Class<?> plain = (Class<?>) type;
        shape.append(plain.getName()).append(' ');
        if (PlainForms.ALL.containsKey(plain)) {
            return PlainForms.ALL.get(plain);
        }
        if (plain.isEnum()) {
            shape.append(Arrays.toString(plain.getEnumConstants()));
            return choice(plain.getEnumConstants());
        }
        return record(plain, Map.of());
    }

    private Form generic(Class<?> raw, Type[] arguments, Map<TypeVariable<?>, Type> bound) {
        shape.append(raw.getName()).append('<');
        if (raw == Optional.class) {
            return maybe(of(arguments[0], bound));
        }
        if (raw == List.class) {
            Form each = of(arguments[0], bound);
            return gaps
                    ? many(orNull(each), all -> Collections.unmodifiableList(new ArrayList<>(all)))
                    : many(each, List::copyOf);
        }
        if (raw == Set.class) {
            return many(of(arguments[0], bound), Set::copyOf);
        }
        if (raw == Map.class) {
            return map(of(arguments[0], bound), of(arguments[1], bound));
        }
        Map<TypeVariable<?>, Type> inner = new HashMap<>();
        for (int i = 0; i < arguments.length; i++) {
            inner.put(raw.getTypeParameters()[i], arguments[i]);
        }
        return record(raw, inner);
    }

    private Form record(Class<?> type, Map<TypeVariable<?>, Type> bound) {
        String key = type + " " + bound.values();
        if (records.containsKey(key)) {
            return records.get(key);
        }
        LaterForm form = new LaterForm();
        records.put(key, form);
        shape.append(type.getName()).append('(');
        form.is(type.isSealed() ? oneOf(type, bound) : components(type, bound));
        shape.append(')');
        records.put(key, form.found());
        return form.found();
    }

    private Form components(Class<?> type, Map<TypeVariable<?>, Type> bound) {
        if (!type.isRecord()) {
            throw new IllegalArgumentException(type + " has no form");
        }
        List<Form> parts = new ArrayList<>();
        for (RecordComponent part : type.getRecordComponents()) {
            shape.append(part.getName()).append(':');
            Form form = of(part.getGenericType(), bound);
            parts.add(gaps && !part.getType().isPrimitive() ? orNull(form) : form);
        }
        return new RecordForm(type, parts);
    }

    /** @param type closed: its kinds take their type variables in its own order */
    private Form oneOf(Class<?> type, Map<TypeVariable<?>, Type> bound) {
        List<Class<?>> kinds = List.of(type.getPermittedSubclasses());
        List<Form> forms = new ArrayList<>();
        for (Class<?> kind : kinds) {
            Map<TypeVariable<?>, Type> inner = new LinkedHashMap<>();
            for (int i = 0; i < kind.getTypeParameters().length; i++) {
                inner.put(kind.getTypeParameters()[i], bound.get(type.getTypeParameters()[i]));
            }
            forms.add(record(kind, inner));
        }
        return new KindForm(kinds, forms);
    }

    private static Form choice(Object[] all) {
        return new Form() {
            @Override
            public void write(Object value, PackedOut out) {
                out.count(((Enum<?>) value).ordinal());
            }

            @Override
            public Object read(PackedIn in) {
                return all[in.count()];
            }
        };
    }

    private static Form orNull(Form inner) {
        return new Form() {
            @Override
            public void write(Object value, PackedOut out) {
                out.octet(value == null ? 0 : 1);
                if (value != null) {
                    inner.write(value, out);
                }
            }

            @Override
            public Object read(PackedIn in) {
                return in.octet() == 0 ? null : inner.read(in);
            }
        };
    }

    private static Form maybe(Form inner) {
        return new Form() {
            @Override
            public void write(Object value, PackedOut out) {
                Optional<?> optional = (Optional<?>) value;
                out.octet(optional.isPresent() ? 1 : 0);
                optional.ifPresent(v -> inner.write(v, out));
            }

            @Override
            public Object read(PackedIn in) {
                return in.octet() == 0 ? Optional.empty() : Optional.of(inner.read(in));
            }
        };
    }

    private interface Collecting {
        Collection<?> collect(Collection<?> all);
    }

    private static Form many(Form inner, Collecting collecting) {
        return new Form() {
            @Override
            public void write(Object value, PackedOut out) {
                Collection<?> all = (Collection<?>) value;
                out.count(all.size());
                all.forEach(each -> inner.write(each, out));
            }

            @Override
            public Object read(PackedIn in) {
                Object[] all = new Object[in.size()];
                for (int i = 0; i < all.length; i++) {
                    all[i] = inner.read(in);
                }
                return collecting.collect(Arrays.asList(all));
            }
        };
    }

    private static Form map(Form keys, Form values) {
        return new Form() {
            @Override
            public void write(Object value, PackedOut out) {
                Map<?, ?> map = (Map<?, ?>) value;
                out.count(map.size());
                map.forEach((k, v) -> {
                    keys.write(k, out);
                    values.write(v, out);
                });
            }

            @Override
            public Object read(PackedIn in) {
                Map<Object, Object> map = new LinkedHashMap<>();
                for (int left = in.size(); left > 0; left--) {
                    map.put(keys.read(in), values.read(in));
                }
                return Collections.unmodifiableMap(map);
            }
        };
    }
}
