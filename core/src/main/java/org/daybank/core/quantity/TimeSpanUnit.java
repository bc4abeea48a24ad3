package org.daybank.core.quantity;

import java.util.List;

/** Units of time span, by UCUM code. */
public enum TimeSpanUnit implements Unit {
    /** h; UCUM h. */
    HOUR("h", "h", Scale.of("1", "1"), "hr", "hour", "hours"),
    /** s; UCUM s. */
    SECOND("s", "s", Scale.of("1", "3600"), "sec", "second", "seconds"),
    /** min; UCUM min. */
    MINUTE("min", "min", Scale.of("1", "60"), "minute", "minutes"),
    /** d; UCUM d. */
    DAY("d", "d", Scale.of("24", "1"), "day", "days"),
    /** a; UCUM a. Taken as 365 days, the year that is stepped through by the hour; UCUM's own is a quarter of a day longer. */
    YEAR("a", "a", Scale.of("8760", "1"), "year", "years", "yr");

    private final UnitDefinition definition;

    TimeSpanUnit(String code, String symbol, Scale scale, String... others) {
        definition = new UnitDefinition(code, symbol, scale, List.of(others));
    }

    @Override
    public UnitDefinition definition() {
        return definition;
    }
}
