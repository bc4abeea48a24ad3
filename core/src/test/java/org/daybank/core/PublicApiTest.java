package org.daybank.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daybank.core.quantity.Power;
import org.junit.jupiter.api.Test;

/**
 * Everything that strangers can call stands in a list, so that nothing is added, changed or taken away without being seen.
 *
 * <p>A record stands there with its components in their order; its constructor, its accessors and the builder generated for
 * it follow from them and are left out, as is what every record and every enum has.
 */
class PublicApiTest {
    private static final Path LIST = Path.of("src", "api", "public-api.txt");

    private static final String WRITE = "mvn -pl core test -Dtest=PublicApiTest -Ddaybank.api.write=true";

    @Test
    void whatStrangersCanCallIsWhatTheListSays() throws Exception {
        List<String> found = exportedTypes().stream()
                .sorted(Comparator.comparing(Class::getTypeName))
                .flatMap(type -> Stream.of(Stream.of(header(type)), components(type), members(type)))
                .flatMap(lines -> lines)
                .map(line -> line.replace("org.daybank.core.", "").replaceAll("java\\.(lang|util)\\.(?=[A-Z])", ""))
                .toList();
        if (Boolean.getBoolean("daybank.api.write")) {
            Files.write(LIST, found);
        }
        List<String> now = underTheirTypes(found);
        List<String> listed = underTheirTypes(Files.readAllLines(LIST));
        assertThat(without(now, listed)).as("new; meant? " + WRITE).isEmpty();
        assertThat(without(listed, now)).as("gone; meant? " + WRITE).isEmpty();
        assertThat(now.equals(listed)).as("in the same order; else " + WRITE).isTrue();
    }

    private static List<String> underTheirTypes(List<String> lines) {
        List<String> full = new ArrayList<>();
        String type = "";
        for (String line : lines) {
            type = line.startsWith(" ") ? type : line;
            full.add(line.startsWith(" ") ? type + line : line);
        }
        return full;
    }

    private static List<String> without(List<String> lines, List<String> others) {
        List<String> rest = new ArrayList<>(lines);
        rest.removeAll(new HashSet<>(others));
        return rest;
    }

    private static List<Class<?>> exportedTypes() throws Exception {
        Path classes = Path.of(
                Power.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        try (InputStream compiled = Files.newInputStream(classes.resolve("module-info.class"));
                Stream<Path> files = Files.walk(classes)) {
            Set<Path> exported = ModuleDescriptor.read(compiled).exports().stream()
                    .map(export -> classes.resolve(export.source().replace('.', '/')))
                    .collect(Collectors.toSet());
            return files.filter(file -> exported.contains(file.getParent()))
                    .map(file -> classes.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> name.endsWith(".class") && !name.endsWith("package-info.class"))
                    .<Class<?>>map(name -> loaded(name.replace(".class", "").replace('/', '.')))
                    .filter(type -> visible(type) && !generated(type))
                    .toList();
        }
    }

    private static Class<?> loaded(String name) {
        try {
            return Class.forName(name, false, PublicApiTest.class.getClassLoader());
        } catch (ClassNotFoundException gone) {
            throw new IllegalStateException(gone);
        }
    }

    /** Public, and so is all that it lies in. */
    private static boolean visible(Class<?> type) {
        Class<?> around = type.getEnclosingClass();
        return Modifier.isPublic(type.getModifiers()) && (around == null || visible(around));
    }

    private static boolean generated(Class<?> type) {
        Class<?> around = type.getEnclosingClass();
        return type.getSimpleName().endsWith("Builder") || (around != null && generated(around));
    }

    private static String header(Class<?> type) {
        return Stream.concat(Stream.ofNullable(type.getGenericSuperclass()), Arrays.stream(type.getGenericInterfaces()))
                .map(Type::getTypeName)
                .filter(name -> !name.matches("java\\.lang\\.(Object|Record|Enum<.*>)|.*Builder\\$With"))
                .collect(Collectors.joining(", ", type.toGenericString() + " : ", ""))
                .replaceFirst(" : $", "");
    }

    private static Stream<String> components(Class<?> type) {
        return type.isRecord()
                ? Arrays.stream(type.getRecordComponents())
                        .map(part -> "    " + part.getGenericType().getTypeName() + " " + part.getName())
                : Stream.of();
    }

    private static Stream<String> members(Class<?> type) {
        Stream<String> methods = Arrays.stream(type.getDeclaredMethods())
                .filter(method -> callable(method) && !implied(method))
                .map(Method::toGenericString);
        Stream<String> constructors = Arrays.stream(type.getDeclaredConstructors())
                .filter(constructor -> callable(constructor) && !canonical(constructor))
                .map(Constructor::toGenericString);
        Stream<String> fields = Arrays.stream(type.getDeclaredFields())
                .filter(PublicApiTest::callable)
                .map(Field::toGenericString);
        return Stream.of(fields, constructors, methods)
                .flatMap(lines -> lines)
                .map(line -> "    " + line.replace(type.getTypeName() + ".", ""))
                .sorted();
    }

    private static boolean implied(Method method) {
        Class<?> type = method.getDeclaringClass();
        if (type.isEnum()) {
            return Set.of("values", "valueOf").contains(method.getName());
        }
        return type.isRecord()
                && (Set.of("equals", "hashCode", "toString").contains(method.getName())
                        || Arrays.stream(type.getRecordComponents())
                                .anyMatch(part -> part.getAccessor().equals(method)));
    }

    private static boolean canonical(Constructor<?> constructor) {
        Class<?> type = constructor.getDeclaringClass();
        return type.isRecord()
                && Arrays.equals(
                        constructor.getParameterTypes(),
                        Arrays.stream(type.getRecordComponents())
                                .map(RecordComponent::getType)
                                .toArray());
    }

    private static boolean callable(Member member) {
        return !member.isSynthetic() && (member.getModifiers() & (Modifier.PUBLIC | Modifier.PROTECTED)) != 0;
    }
}
