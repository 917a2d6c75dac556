package noctuary.site;

import freemarker.template.ObjectWrapper;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** A record as templates see it: its components by name, and nothing else of it. */
final class RecordModel implements TemplateHashModel {
    private static final Map<Class<?>, Map<String, Method>> COMPONENTS = new ConcurrentHashMap<>();
    private static final Object[] NOTHING = {};

    private final Record values;
    private final Map<String, Method> components;
    private final ObjectWrapper wrapper;

    RecordModel(Record values, ObjectWrapper wrapper) {
        this.values = values;
        this.components = componentsOf(values.getClass());
        this.wrapper = wrapper;
    }

    @Override
    public TemplateModel get(String name) throws TemplateModelException {
        Method accessor = components.get(name);
        if (accessor == null) {
            return null;
        }
        try {
            return wrapper.wrap(accessor.invoke(values, NOTHING));
        } catch (ReflectiveOperationException e) {
            throw new TemplateModelException("the component " + name + " cannot be read", e);
        }
    }

    @Override
    public boolean isEmpty() {
        return false;
    }

    /** Asks first, because to compute if absent may wait for another thread even where it is present. */
    private static Map<String, Method> componentsOf(Class<?> type) {
        Map<String, Method> known = COMPONENTS.get(type);
        return known != null ? known : COMPONENTS.computeIfAbsent(type, RecordModel::components);
    }

    private static Map<String, Method> components(Class<?> type) {
        Map<String, Method> components = new HashMap<>();
        for (RecordComponent component : type.getRecordComponents()) {
            Method accessor = component.getAccessor();
            accessor.setAccessible(true);
            components.put(component.getName(), accessor);
        }
        return components;
    }
}
