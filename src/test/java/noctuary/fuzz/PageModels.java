package noctuary.fuzz;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import noctuary.site.page.ChangePage;
import noctuary.site.page.Markup;
import noctuary.site.page.OriginNote;

/**
 * Page models by their declaration: any text where text is printed, addresses where an address stands, parts that may
 * be absent absent at times. One seed makes the same page whatever its words.
 */
final class PageModels {
    /** Components that the program makes, never the keeper: addresses, ids, sizes, words of a closed list. */
    private static final Set<String> OURS = Set.of(
            "address",
            "feed",
            "href",
            "src",
            "srcset",
            "full",
            "root",
            "iso",
            "nightIso",
            "id",
            "stylesheets item",
            "tiles",
            "slug",
            "viewBox",
            "boxWidth",
            "boxHeight",
            "transform",
            "width",
            "height",
            "tone",
            "level",
            "by",
            "words");

    private static final Set<String> MAY_BE_ABSENT = Set.of(
            "overview",
            "plot",
            "test",
            "review",
            "chart",
            "framing",
            "hero",
            "plate",
            "effect",
            "wanted",
            "stars",
            "shapes",
            "map",
            "course",
            "older",
            "newer",
            "hours",
            "sharpness",
            "train",
            "experiment",
            "sky",
            "shown",
            "view",
            "growth",
            "fallChart");

    private static final Set<String> DATED = Set.of("Row", "ChangePage", "ChangeMark");
    private static final int DEEPEST_ORIGIN = 2;

    private final Random random;
    private final Supplier<String> words;
    private int ids;
    private int depth;

    /** @param words the texts, in the order in which they are asked for */
    PageModels(Random random, Supplier<String> words) {
        this.random = random;
        this.words = words;
    }

    <T extends Record> T of(Class<T> type) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        depth += type == OriginNote.class ? 1 : 0;
        for (int i = 0; i < values.length; i++) {
            values[i] = value(components[i].getGenericType(), components[i].getName(), type);
        }
        depth -= type == OriginNote.class ? 1 : 0;
        try {
            var constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("page models are public records: " + type, e);
        }
    }

    private Object value(Type type, String name, Class<?> owner) {
        if (type == String.class) {
            boolean dated = name.equals("date") && DATED.contains(owner.getSimpleName());
            boolean ours = OURS.contains(name) && !(name.equals("words") && owner == ChangePage.class);
            return dated ? ours("iso") : ours ? ours(name) : words.get();
        }
        if (type == int.class) {
            return name.matches("width|height|side|ratio") ? 3 + random.nextInt(17) : random.nextInt(4);
        }
        if (type == boolean.class) {
            return random.nextBoolean();
        }
        if (type == Markup.class) {
            return Markup.NONE;
        }
        if (type instanceof ParameterizedType list) {
            return list(list.getActualTypeArguments()[0], name, owner);
        }
        Class<?> part = (Class<?>) type;
        boolean absent = MAY_BE_ABSENT.contains(name) && random.nextInt(3) == 0;
        return absent ? null : of(part.asSubclass(Record.class));
    }

    private List<Object> list(Type item, String name, Class<?> owner) {
        List<Object> items = new ArrayList<>();
        int size = name.equals("inputs") && depth > DEEPEST_ORIGIN ? 0 : random.nextInt(3);
        for (int i = 0; i < size; i++) {
            items.add(value(item, name + " item", owner));
        }
        return items;
    }

    private String ours(String name) {
        return switch (name) {
            case "id", "slug" -> "id-" + ids++;
            case "root" -> "../../";
            case "iso", "nightIso" -> "2025-06-14";
            case "tone" -> List.of("good", "bad", "open").get(random.nextInt(3));
            case "level" -> List.of("ok", "warn", "wrong").get(random.nextInt(3));
            case "by" -> List.of("typed", "header", "measured", "computed").get(random.nextInt(4));
            case "width", "height", "boxWidth", "boxHeight" -> "12";
            case "viewBox" -> "0 0 12 12";
            case "transform" -> "matrix(1 0 0 1 0 0)";
            case "srcset" -> "a.jpg 320w";
            case "href" -> random.nextInt(4) == 0 ? "" : "a/b.html";
            default -> "a/b.html";
        };
    }
}
