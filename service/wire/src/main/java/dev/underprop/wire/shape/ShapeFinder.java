package dev.underprop.wire.shape;

import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.introspect.BeanPropertyDefinition;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** Finds the shape that a model's class stands for, with the names that the mapper would bind. */
final class ShapeFinder {
    private static final List<Class<?>> INTS = List.of(int.class, Integer.class, short.class, Short.class);
    private static final List<Class<?>> LONGS = List.of(long.class, Long.class, BigInteger.class);
    private static final List<Class<?>> DECIMALS =
            List.of(double.class, Double.class, float.class, Float.class, BigDecimal.class, Number.class);

    private final ObjectMapper mapper;
    private final Map<JavaType, Shape.Members> known = new ConcurrentHashMap<>();

    ShapeFinder(ObjectMapper mapper) {
        this.mapper = mapper;
    }

    Shape of(Class<?> type) {
        return of(mapper.constructType(type));
    }

    private Shape of(JavaType type) {
        if (type.isMapLikeType()) {
            return new Shape.Named(of(type.getContentType()));
        }
        if (type.isArrayType() || type.isCollectionLikeType()) {
            return new Shape.Many(of(type.getContentType()), Set.class.isAssignableFrom(type.getRawClass()));
        }
        return ofSingle(type, type.getRawClass());
    }

    private Shape ofSingle(JavaType type, Class<?> raw) {
        if (raw == boolean.class || raw == Boolean.class) {
            return new Shape.Truth();
        }
        if (INTS.contains(raw)) {
            return new Shape.Whole(Integer.MIN_VALUE, Integer.MAX_VALUE);
        }
        if (LONGS.contains(raw)) {
            return new Shape.Whole(Long.MIN_VALUE, Long.MAX_VALUE);
        }
        if (DECIMALS.contains(raw)) {
            return new Shape.Decimal();
        }
        if (raw == Object.class) {
            return new Shape.Any();
        }
        return raw.isEnum() || raw.getName().startsWith("java.") ? new Shape.Text() : ofBean(type);
    }

    private Shape ofBean(JavaType type) {
        return known.computeIfAbsent(type, bean -> new Shape.Members(() -> members(bean)));
    }

    private Map<String, Shape> members(JavaType type) {
        // Sorted, for the order of reflection is not promised, and messages list the names.
        Map<String, Shape> members = new TreeMap<>();
        BeanDescription description = mapper.getDeserializationConfig().introspect(type);
        for (BeanPropertyDefinition property : description.findProperties()) {
            if (property.couldDeserialize()) {
                members.put(property.getName(), of(property.getPrimaryType()));
            }
        }
        return Collections.unmodifiableMap(members);
    }
}
