/** Typed quantities and calculators for sizing battery-based solar-electric systems. */
module org.daybank.core {
    requires static org.jspecify;
    requires static io.soabase.recordbuilder.core;
    requires static java.compiler;

    exports org.daybank.core.array;
    exports org.daybank.core.bank;
    exports org.daybank.core.site;
    exports org.daybank.core.sun;
    exports org.daybank.core.load;
    exports org.daybank.core.charger;
    exports org.daybank.core.inverter;
    exports org.daybank.core.simulation;
    exports org.daybank.core.sweep;
    exports org.daybank.core.generator;
    exports org.daybank.core.grid;
    exports org.daybank.core.wiring;
    exports org.daybank.core.catalog;
    exports org.daybank.core.design;
    exports org.daybank.core.quantity;
    exports org.daybank.core.schema;
    exports org.daybank.core.working;
}
