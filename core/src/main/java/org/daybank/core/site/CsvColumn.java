package org.daybank.core.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.daybank.core.quantity.IrradianceUnit;
import org.daybank.core.quantity.Scale;
import org.daybank.core.quantity.SpeedUnit;
import org.daybank.core.quantity.TemperatureUnit;
import org.daybank.core.quantity.Unit;

/** One column of weather text: what it holds, in which unit, and its numbers so far. */
final class CsvColumn {
    private static final List<Double> MISSING_MARKS = List.of(-999.0, -9999.0, 9999.0, 99999.0);

    private final WeatherColumn kind;
    private final double shift;
    private final double factor;
    private final double[] values = new double[HourCalendar.LEAP];

    private CsvColumn(WeatherColumn kind, Scale scale) {
        this.kind = kind;
        this.shift = scale.shift().doubleValue();
        this.factor = scale.multiplier().doubleValue() / scale.divisor().doubleValue();
    }

    /** The column with this name; empty after a complaint when there is none. */
    static Optional<CsvColumn> named(String name, Consumer<String> complain) {
        int underscore = name.lastIndexOf('_');
        String label = underscore < 0 ? name : name.substring(0, underscore);
        String unitText = underscore < 0 ? "" : name.substring(underscore + 1);
        Optional<WeatherColumn> kind = WeatherColumn.ALL.stream()
                .filter(column -> column.label.equals(label))
                .findFirst();
        if (kind.isEmpty()) {
            complain.accept("'%s' is no column of weather: write %s, each with its unit, as in '%s'"
                    .formatted(
                            name,
                            WeatherColumn.ALL.stream()
                                    .map(column -> column.label)
                                    .collect(Collectors.joining(", ")),
                            "global_W/m2"));
            return Optional.empty();
        }
        Optional<? extends Unit> unit = units(kind.get()).stream()
                .filter(candidate -> spelled(candidate, unitText))
                .findFirst();
        if (unit.isEmpty()) {
            complain.accept("'%s' has no known unit: write one of %s"
                    .formatted(
                            name,
                            units(kind.get()).stream()
                                    .map(candidate -> label + "_" + candidate.code())
                                    .collect(Collectors.joining(", "))));
            return Optional.empty();
        }
        return Optional.of(new CsvColumn(kind.get(), unit.get().definition().scale()));
    }

    private static List<? extends Unit> units(WeatherColumn kind) {
        return switch (kind) {
            case GLOBAL, DIRECT, DIFFUSE -> List.of(IrradianceUnit.values());
            case AIR -> List.of(TemperatureUnit.values());
            case WIND -> List.of(SpeedUnit.values());
        };
    }

    private static boolean spelled(Unit unit, String text) {
        return unit.code().equals(text)
                || unit.symbol().equals(text)
                || unit.definition().otherSpellings().contains(text);
    }

    WeatherColumn kind() {
        return kind;
    }

    /** Keeps a number of this column's unit; says what is wrong with it, if anything. */
    Optional<String> take(double number, int hour) {
        double value = (number + shift) * factor;
        if (hour < values.length) {
            values[hour] = value;
        }
        return MISSING_MARKS.contains(number)
                ? Optional.of(
                        String.format(Locale.ROOT, "%s is %.0f, which marks a missing value.", kind.label, number))
                : kind.complaint(value, Math.min(hour / 24 + 1, 366));
    }

    double[] values(int hours) {
        return Arrays.copyOf(values, hours);
    }
}
