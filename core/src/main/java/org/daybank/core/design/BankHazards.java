package org.daybank.core.design;

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
import org.daybank.core.working.Severity;

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
        hazards.add(
                "bankArc",
                Severity.DANGER,
                "bank",
                "Insulate tools, take off jewellery, cover terminals, wear eye protection.",
                "A bank of %s can weld metal, arc and burn, whatever its voltage.",
                layout.trueNominal());
        Voltage highest = highestBus(system.chargeSettings());
        if (highest.compareTo(Hazards.TOUCHABLE_DC) > 0) {
            hazards.add(
                    "busVoltage",
                    Severity.DANGER,
                    "bank",
                    "Cover all live parts; keep one hand back, or disconnect charging before work.",
                    "While it is charged the bus reaches %s of direct current: touching it can kill, and an arc does"
                            + " not go out by itself.",
                    highest);
        }
        Current shortCircuit = layout.shortCircuitCurrent();
        hazards.add(
                "bankShortCircuit",
                Severity.DANGER,
                "bank to inverter",
                "Put a fuse that can break this current at this voltage right at the bank, before any other device.",
                "Short-circuited, the bank drives about %s until something melts; the cable is not reckoned in.",
                shortCircuit);
        hazards.add(
                "hotTerminals",
                Severity.DANGER,
                "bank",
                "Tighten to the maker's torque, check again after a month and then each year.",
                "A loose terminal heats up under %s and can start a fire.",
                system.inverter().map(InverterFit::currentAtRating).orElse(layout.maximumDischargeCurrent()));
        hazards.add(
                "reversePolarity",
                Severity.WARNING,
                "bank",
                "Measure the polarity before the last connection is made.",
                "Connected the wrong way round, the bank destroys controller and inverter at once.");
        if (layout.battery().mass().compareTo(ONE_PERSON_LIFTS) > 0) {
            hazards.add(
                    "lifting",
                    Severity.DANGER,
                    "bank",
                    "Lift with two people or a hoist; check what the floor carries.",
                    "One battery weighs %s, the whole bank %s.",
                    layout.battery().mass(),
                    layout.mass());
        }
        if (layout.count() > 1) {
            hazards.add(
                    "mixedBatteries",
                    Severity.WARNING,
                    "bank",
                    "Use batteries of one model, age and charge; replace them together.",
                    "In a bank of %s batteries an old or different one is overcharged or starved by the others.",
                    layout.count());
        }
        if (layout.parallel() > 1) {
            hazards.add(
                    "parallelStrings",
                    Severity.NOTICE,
                    "bank",
                    "Give each string its own fuse and equal cable lengths to common bars.",
                    "%s strings in parallel share current unequally, and a faulty one is fed by the others.",
                    layout.parallel());
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
            hazards.add(
                    "hydrogen",
                    Severity.DANGER,
                    "bank",
                    "Ventilate from below to above, keep flames and sparks away; no switch or relay above the bank.",
                    "Charging sets hydrogen free, explosive from 4 %%: the room needs %s of fresh air, with openings"
                            + " of %s below and above; where it is heated, that air takes %s of heat.",
                    ventilation.flow(),
                    "%.0f cm²".formatted(ventilation.openings().squareCentimetres()),
                    ventilation.heatLoss());
        }
        if (vented) {
            hazards.add(
                    "acid",
                    Severity.DANGER,
                    "bank",
                    "Wear goggles and gloves, keep water and soda at hand, stand the bank in a tray.",
                    "Vented cells hold sulphuric acid and spray it when charged hard.");
        }
        if (ventilation != null && bank.temperature().celsius() < 0) {
            hazards.add(
                    "closedCupboard",
                    Severity.DANGER,
                    "bank",
                    "Keep the openings of a cupboard around the bank free in winter as well; what warms it must heat"
                            + " this air too, and must not spark.",
                    "Around the bank it gets down to %s: a cupboard closed or heated against that cold keeps the hydrogen"
                            + " in.",
                    bank.temperature());
        }
        if (bank.temperature().celsius() < 0) {
            hazards.add(
                    "freezing",
                    Severity.WARNING,
                    "bank",
                    "Never leave it discharged in the cold; keep the low-voltage disconnect in use.",
                    "Around the bank it gets down to %s: a deeply discharged battery freezes and bursts.",
                    bank.temperature());
        }
    }

    private void lithium(BankFit bank) {
        hazards.add(
                "batteryManagement",
                Severity.DANGER,
                "bank",
                "Use only batteries with their own management system; set the controller so that the management never"
                        + " has to act, and see that controller and inverter stand its opening.",
                "Lithium cells must be watched one by one; when the management system disconnects, the array may drive"
                        + " the bus up and the inverter stops.");
        hazards.add(
                "lithiumFire",
                Severity.DANGER,
                "bank",
                "Mount on what does not burn, away from escape routes; keep to the maker's distances, and fit smoke alarms"
                        + " where people sleep.",
                "A damaged or overcharged lithium battery can burn and cannot be put out with little water.");
        if (bank.heated()) {
            hazards.add(
                    "heatedBank",
                    Severity.WARNING,
                    "bank",
                    "Build the insulated box as reckoned, and see that the heater has priority over other loads.",
                    "Without its heater the bank would get as cold as the air; below %s its lithium cells must not be"
                            + " charged.",
                    bank.battery().coldestCharge());
        }
        Temperature recordLow = brief.site().recordLow();
        boolean outdoors = brief.bank().location() == BankLocation.OUTDOORS;
        system.chargeSettings()
                .chargingFrom()
                .filter(coldest -> outdoors && !bank.heated() && recordLow.compareTo(coldest) < 0)
                .ifPresent(coldest -> hazards.add(
                        "chargingInTheCold",
                        Severity.WARNING,
                        "bank",
                        "Take a battery whose management system stops charging in the cold, and let the controller"
                                + " measure the temperature of its cells.",
                        "The air has been as cold as %s; charged below %s, lithium cells are plated with metal and"
                                + " fail for good.",
                        recordLow,
                        coldest));
    }
}
