package org.daybank.core.catalog;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.Battery;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.StringInverter;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.Problems;
import org.daybank.core.working.Table;

/** A catalogue as a set of tables: one for each list of a {@link Catalog}, named like it, read by {@link Sheets}. */
public final class CatalogTables {
    /** The tables and what a row of each holds, in the order of the catalogue. */
    private static final Map<String, Class<? extends Record>> ROWS = rows();

    private CatalogTables() {}

    /** Names of the tables there may be. */
    public static List<String> names() {
        return List.copyOf(ROWS.keySet());
    }

    /**
     * Reads a catalogue; a table that is not there is an empty list where a {@link Catalog} may leave the list out.
     *
     * @param tables finds a table by its name
     * @throws InvalidInput with everything that is wrong in any table, else in the catalogue as a whole
     */
    public static Catalog read(Function<String, Optional<Table>> tables) {
        Problems problems = new Problems();
        Map<String, List<? extends Record>> lists = new LinkedHashMap<>();
        for (String name : ROWS.keySet()) {
            try {
                tables.apply(name).ifPresent(table -> lists.put(name, rows(name, table)));
            } catch (InvalidInput refused) {
                problems.addAll(refused, problem -> named(name, problem));
            }
        }
        problems.throwIfAny();
        return new Catalog(
                list(lists, "modules", PvModule.class),
                list(lists, "batteries", Battery.class),
                list(lists, "controllers", ChargeController.class),
                list(lists, "inverters", Inverter.class),
                list(lists, "stringInverters", StringInverter.class),
                list(lists, "microinverters", Microinverter.class),
                list(lists, "stock", StockLine.class));
    }

    /**
     * Reads one table.
     *
     * @param name which, of {@link #names()}
     * @throws InvalidInput with everything that is wrong in any row or with the columns
     * @throws IllegalArgumentException when there is no such table
     */
    public static List<? extends Record> rows(String name, Table table) {
        Class<? extends Record> row = ROWS.get(name);
        if (row == null) {
            throw new IllegalArgumentException("there is no table %s; known are %s".formatted(name, names()));
        }
        return Sheets.read(row, table);
    }

    private static Problem named(String table, Problem problem) {
        String path = problem.path().startsWith("/") ? problem.path() : "";
        return new Problem("/" + table + path, problem.code(), "%s, %s".formatted(table, problem.message()));
    }

    @SuppressWarnings("NullAway") // the catalogue names a list that is not there and must be
    private static <R> List<R> list(Map<String, List<? extends Record>> lists, String name, Class<R> row) {
        List<? extends Record> found = lists.get(name);
        return found == null ? null : found.stream().map(row::cast).toList();
    }

    private static Map<String, Class<? extends Record>> rows() {
        Map<String, Class<? extends Record>> rows = new LinkedHashMap<>();
        for (RecordComponent list : Catalog.class.getRecordComponents()) {
            Class<?> row = (Class<?>) ((ParameterizedType) list.getGenericType()).getActualTypeArguments()[0];
            rows.put(list.getName(), row.asSubclass(Record.class));
        }
        return rows;
    }
}
