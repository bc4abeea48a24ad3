package org.daybank.api.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.daybank.api.wire.Form;
import org.daybank.api.wire.Shape;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Scalars;
import org.daybank.core.site.HourlySeries;
import org.jspecify.annotations.Nullable;

/** Figures and names as a person reads them. */
final class Words {
    private static final String NONE = "–";
    private static final Pattern ABBREVIATION = Pattern.compile("\\b(ac|dc|agm|mppt|pwm)\\b");
    private static final int LONGEST = 160;
    private static final int MOST_LISTED = 12;

    private Words() {}

    /** To three digits with its unit; a dash where there is none. */
    static String of(@Nullable Quantity quantity) {
        return quantity == null ? NONE : quantity.rounded(3).replaceFirst(" °$", "°");
    }

    /** To four digits with its unit, for what someone types into a device; a dash where there is none. */
    static String exact(@Nullable Quantity quantity) {
        return quantity == null ? NONE : quantity.rounded();
    }

    /** As a percentage to three digits. */
    static String percent(@Nullable Ratio ratio) {
        if (ratio == null) {
            return NONE;
        }
        BigDecimal percent = BigDecimal.valueOf(ratio.percent());
        // close to all, the digits that tell are those of the rest
        boolean nearAll = ratio.fraction() > 0.99 && ratio.fraction() < 1;
        BigDecimal rounded = nearAll ? percent.setScale(2, RoundingMode.HALF_EVEN) : percent.round(new MathContext(3));
        return rounded.stripTrailingZeros().toPlainString() + " %";
    }

    /** A bare number to three digits. */
    static String number(double value) {
        return Ratio.of(value).significant(3);
    }

    /** A time in years to three digits. */
    static String years(TimeSpan time) {
        return number(time.years()) + " years";
    }

    /** A time in hours to three digits. */
    static String hours(TimeSpan time) {
        return number(time.hours()) + " h";
    }

    /** As a bare number to three digits. */
    static String times(@Nullable Ratio ratio) {
        return ratio == null ? NONE : ratio.significant(3);
    }

    /** Short English name of a month. */
    static String of(Month month) {
        return month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    /** English name of a month. */
    static String whole(Month month) {
        return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** "1 module", "2 modules". */
    static String counted(int count, String one) {
        if (count == 1) {
            return "1 " + one;
        }
        return count + " " + (one.endsWith("y") ? one.substring(0, one.length() - 1) + "ies" : one + "s");
    }

    /** A name in a code, its parts apart: {@code chargeController} becomes "charge controller". */
    static String apart(String name) {
        return name.replaceAll("([a-z0-9])([A-Z])", "$1 $2").toLowerCase(Locale.ENGLISH);
    }

    /** A constant in words, the trade's abbreviations in capitals. */
    static String of(Enum<?> constant) {
        return ABBREVIATION
                .matcher(apart(Scalars.name(constant)))
                .replaceAll(found -> found.group().toUpperCase(Locale.ENGLISH));
    }

    /** Any value that stands in a record, in a line that fits a cell. */
    static String value(Object value) {
        String text = line(value);
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    }

    private static String line(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(Words::line).orElse(NONE);
        }
        if (value instanceof Quantity quantity) {
            return quantity.rounded();
        }
        if (value instanceof HourlySeries series) {
            return series.size() + " hours";
        }
        if (value instanceof Month month) {
            return of(month);
        }
        if (value instanceof Enum<?> constant) {
            return of(constant);
        }
        if (value instanceof List<?> list) {
            if (list.size() > 1 && list.stream().distinct().count() == 1) {
                return list.size() + " × " + line(list.get(0));
            }
            String first = list.stream().limit(MOST_LISTED).map(Words::line).collect(Collectors.joining(", "));
            return list.isEmpty() ? "none" : list.size() > MOST_LISTED ? first + " …" : first;
        }
        if (value instanceof Double number) {
            return Ratio.of(number).significant(4);
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        return value instanceof Record record && Form.of(value.getClass()) == Form.OBJECT
                ? members(record)
                : value.toString();
    }

    private static String members(Record record) {
        StringBuilder text = new StringBuilder();
        for (Shape.Part part : Shape.of(record.getClass()).parts()) {
            Object value = part.in(record);
            if (value != null && text.length() <= LONGEST) {
                text.append(text.isEmpty() ? "" : "; ")
                        .append(apart(part.name()))
                        .append(' ')
                        .append(line(value));
            }
        }
        return text.toString();
    }
}
