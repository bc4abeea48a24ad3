package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.Battery;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.load.InverterCurve;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.SimulatedSystem;
import org.daybank.core.simulation.SimulatedSystemBuilder;
import org.daybank.core.sun.Plane;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a system by their model codes, and how many of each: what stands on an order.
 *
 * @param nominalVoltage what its bus is called: 12, 24 or 48 V
 * @param module model of the modules
 * @param series modules in each string
 * @param strings in parallel
 * @param tilt of the array from the horizontal
 * @param azimuth where it faces, clockwise from north
 * @param controller model of the charge controllers
 * @param controllers how many share the strings
 * @param battery model of the batteries
 * @param parallel strings of batteries; their number in series follows from the voltage
 * @param inverter model of the inverters; absent when every load is DC
 * @param inverters how many of them
 */
@RecordBuilder
public record SystemParts(
        @Bounds(minimum = "12 V", maximum = "48 V") Voltage nominalVoltage,

        String module,
        @Bounds(minimum = "1", maximum = "1000") int series,
        @Bounds(minimum = "1", maximum = "100000") int strings,

        @Bounds(minimum = "0 deg", maximum = "90 deg") Angle tilt,

        @Bounds(minimum = "-360 deg", maximum = "360 deg") Angle azimuth,

        String controller,

        @Bounds(minimum = "1", maximum = "1000") @Assumed(value = "1", source = "one unless more are stated")
        Integer controllers,

        String battery,

        @Bounds(minimum = "1", maximum = "1000") @Assumed(value = "1", source = "one unless more are stated")
        Integer parallel,

        @Nullable String inverter,

        @Bounds(minimum = "1", maximum = "1000") @Assumed(value = "1", source = "one unless more are stated")
        Integer inverters)
        implements SystemPartsBuilder.With {
    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public SystemParts {
        controllers = Defaults.otherwise(controllers, SystemParts.class, "controllers");
        parallel = Defaults.otherwise(parallel, SystemParts.class, "parallel");
        inverters = Defaults.otherwise(inverters, SystemParts.class, "inverters");
        int sharing = controllers;
        int shared = strings;
        Validation checks = Validation.of(
                SystemParts.class,
                nominalVoltage,
                module,
                series,
                strings,
                tilt,
                azimuth,
                controller,
                controllers,
                battery,
                parallel,
                inverter,
                inverters);
        Wishes.customary(checks, nominalVoltage)
                .that(
                        sharing <= shared || shared < 1,
                        "controllers",
                        ProblemCode.INCONSISTENT,
                        () -> "%s controllers cannot share %s strings: each takes whole strings"
                                .formatted(sharing, shared))
                .done();
    }

    /** How the array lies. */
    Plane plane() {
        return new Plane(tilt, azimuth);
    }

    /**
     * The system that these parts make for a brief.
     *
     * @throws org.daybank.core.schema.InvalidInput when a model is not in the catalogue, or batteries do not make the voltage
     */
    SimulatedSystem installed(DesignBrief brief, Catalog catalog) {
        Validation checks = new Validation();
        var pv = find(checks, "module", module, catalog.modules(), one -> one.model());
        ChargeController charge =
                find(checks, "controller", controller, catalog.controllers(), ChargeController::model);
        Battery store = find(checks, "battery", battery, catalog.batteries(), Battery::model);
        Inverter ac =
                inverter == null ? null : find(checks, "inverter", inverter, catalog.inverters(), Inverter::model);
        int inSeries = store == null ? 1 : (int) Math.rint(nominalVoltage.dividedBy(store.nominalVoltage()));
        checks.that(
                store == null || store.nominalVoltage().times(inSeries).equals(nominalVoltage),
                "parts/nominalVoltage",
                ProblemCode.INCONSISTENT,
                () -> "no whole number of batteries %s makes %s".formatted(battery, nominalVoltage));
        Ratio depth = store == null
                ? Ratio.ONE
                : brief.policy().bank().depthOfDischarge().of(store.chemistry().family());
        brief.policy().simulation().checkStart(checks, "policy/simulation/initialCharge", depth);
        checks.done();
        LoadProfile loads = brief.profile();
        return SimulatedSystemBuilder.builder()
                .loads(loads)
                .inverter(ac == null ? loads.stated() : curve(ac))
                .array(ArrayLayout.shared(Objects.requireNonNull(pv), series, strings, controllers))
                .controller(Objects.requireNonNull(charge))
                .bank(BankLayout.of(Objects.requireNonNull(store), nominalVoltage, inSeries, parallel))
                .housing(brief.bank())
                .shore(brief.shore())
                .alternator(brief.alternator())
                .depthOfDischarge(depth)
                .build();
    }

    private InverterCurve curve(Inverter one) {
        InverterCurve curve = one.curve();
        return new InverterCurve(curve.rating().times(inverters), curve.k0(), curve.k1(), curve.k2());
    }

    private static <T> @Nullable T find(
            Validation checks, String part, String code, List<T> offered, Function<T, String> model) {
        T found = offered.stream()
                .filter(one -> model.apply(one).equals(code))
                .findFirst()
                .orElse(null);
        checks.that(
                found != null,
                "parts/" + part,
                ProblemCode.UNKNOWN_NAME,
                () -> "%s is no %s of the catalogue; there are %s"
                        .formatted(
                                code,
                                part,
                                String.join(
                                        ", ",
                                        offered.stream().map(model).limit(20).toList())));
        return found;
    }
}
