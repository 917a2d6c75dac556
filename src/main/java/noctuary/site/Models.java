package noctuary.site;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import noctuary.keep.Packing;

/** All that a page shows is in its model: the same model, the same page. Safe for several threads. */
final class Models {
    private final Map<Class<?>, Packing<? extends Record>> packings = new ConcurrentHashMap<>();

    /** One word that stands for a page's model. */
    String digest(Record model) {
        return digest(model.getClass(), model);
    }

    private <T extends Record> String digest(Class<T> type, Record model) {
        @SuppressWarnings("unchecked")
        Packing<T> packing = (Packing<T>) packings.computeIfAbsent(type, t -> Packing.withGaps(type));
        return packing.digest(type.cast(model));
    }
}
