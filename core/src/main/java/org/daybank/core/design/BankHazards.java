package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.BatteryFamily;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.bank.Ventilation;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.HazardCode;

/** The hazards of a bank. */
final class BankHazards {
    private static final Mass ONE_PERSON_LIFTS = Mass.kilograms(25);

    private final DesignBrief brief;
    private final BatterySystem system;
    private final HazardList hazards;

    private BankHazards(DesignBrief brief, BatterySystem system, HazardList hazards) {
        this.brief = brief;
        this.system = system;
        this.hazards = hazards;
    }

    /** Adds those of the bank of a system. */
    static void of(DesignBrief brief, BatterySystem system, HazardList hazards) {
        BankHazards found = new BankHazards(brief, system, hazards);
        BankFit bank = system.bank();
        BankLayout layout = system.bankLayout();
        found.any(layout);
        if (layout.battery().chemistry().family() == BatteryFamily.LEAD_ACID) {
            found.leadAcid(layout, bank);
        } else {
            found.lithium(bank);
        }
    }

    /** A bank of any chemistry. */
    private void any(BankLayout layout) {
        hazards.add(Hazard.of(HazardCode.BANK_ARC, "bank", value("trueNominal", layout.trueNominal())));
        Voltage highest = highestBus(system.chargeSettings());
        if (highest.compareTo(Hazards.TOUCHABLE_DC) > 0) {
            hazards.add(Hazard.of(HazardCode.BUS_VOLTAGE, "bank", value("highest", highest)));
        }
        Current shortCircuit = layout.shortCircuitCurrent();
        hazards.add(Hazard.of(HazardCode.BANK_SHORT_CIRCUIT, "bank to inverter", value("shortCircuit", shortCircuit)));
        hazards.add(Hazard.of(
                HazardCode.HOT_TERMINALS,
                "bank",
                value(
                        "currentAtRating",
                        system.inverter().map(InverterFit::currentAtRating).orElse(layout.maximumDischargeCurrent()))));
        hazards.add(Hazard.of(HazardCode.REVERSE_POLARITY, "bank"));
        if (layout.battery().mass().compareTo(ONE_PERSON_LIFTS) > 0) {
            hazards.add(Hazard.of(
                    HazardCode.LIFTING, "bank", value("mass", layout.battery().mass()), value("mass2", layout.mass())));
        }
        if (layout.count() > 1) {
            hazards.add(Hazard.of(HazardCode.MIXED_BATTERIES, "bank", value("count", layout.count())));
        }
        if (layout.parallel() > 1) {
            hazards.add(Hazard.of(HazardCode.PARALLEL_STRINGS, "bank", value("parallel", layout.parallel())));
        }
    }

    /** The highest voltage that a charge brings: on the coldest day, or to equalise. */
    private static Voltage highestBus(ChargeSettings settings) {
        Voltage cold = settings.absorptionWhenCold();
        return settings.equalisation()
                .filter(equalising -> equalising.compareTo(cold) > 0)
                .orElse(cold);
    }

    private void leadAcid(BankLayout layout, BankFit bank) {
        boolean vented = layout.battery().chemistry() == Chemistry.VENTED_LEAD_ACID;
        Ventilation ventilation = system.ventilation().orElse(null);
        if (ventilation != null) {
            hazards.add(Hazard.of(
                    HazardCode.HYDROGEN,
                    "bank",
                    value("flow", ventilation.flow()),
                    value("openings", Math.round(ventilation.openings().squareCentimetres()) + " cm²"),
                    value("heatLoss", ventilation.heatLoss())));
        }
        if (vented) {
            hazards.add(Hazard.of(HazardCode.ACID, "bank"));
        }
        if (ventilation != null && bank.temperature().celsius() < 0) {
            hazards.add(Hazard.of(HazardCode.CLOSED_CUPBOARD, "bank", value("temperature", bank.temperature())));
        }
        if (bank.temperature().celsius() < 0) {
            hazards.add(Hazard.of(HazardCode.FREEZING, "bank", value("temperature", bank.temperature())));
        }
    }

    private void lithium(BankFit bank) {
        hazards.add(Hazard.of(HazardCode.BATTERY_MANAGEMENT, "bank"));
        hazards.add(Hazard.of(HazardCode.LITHIUM_FIRE, "bank"));
        if (bank.heated()) {
            hazards.add(Hazard.of(
                    HazardCode.HEATED_BANK,
                    "bank",
                    value("coldestCharge", bank.battery().resolved().coldestCharge())));
        }
        Temperature recordLow = brief.resolved().site().recordLow();
        boolean outdoors = brief.bank().location() == BankLocation.OUTDOORS;
        system.chargeSettings()
                .chargingFrom()
                .filter(coldest -> outdoors && !bank.heated() && recordLow.compareTo(coldest) < 0)
                .ifPresent(coldest -> hazards.add(Hazard.of(
                        HazardCode.CHARGING_IN_THE_COLD,
                        "bank",
                        value("recordLow", recordLow),
                        value("coldest", coldest))));
    }
}
