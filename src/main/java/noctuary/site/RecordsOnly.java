package noctuary.site;

import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;

/** Lets templates read the components of records, and nothing else of any object. */
final class RecordsOnly implements MemberAccessPolicy {
    @Override
    public ClassMemberAccessPolicy forClass(Class<?> type) {
        return new ClassMemberAccessPolicy() {
            @Override
            public boolean isMethodExposed(Method method) {
                return method.getDeclaringClass().isRecord() && method.getParameterCount() == 0;
            }

            @Override
            public boolean isConstructorExposed(Constructor<?> constructor) {
                return false;
            }

            @Override
            public boolean isFieldExposed(Field field) {
                return false;
            }
        };
    }

    @Override
    public boolean isToStringAlwaysExposed() {
        return false;
    }
}
