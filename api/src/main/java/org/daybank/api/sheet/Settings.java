package org.daybank.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.Diversion;
import org.daybank.core.design.BatterySystem;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.generator.GeneratorSize;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.Service;
import org.daybank.core.quantity.VoltageCoefficient;

/** What to type into the charge controller and the inverter. */
final class Settings {
    private static final List<String> HEADS = List.of("Setting", "Value", "Remark");

    private final List<List<String>> rows = new ArrayList<>();

    private Settings() {}

    static Html of(DesignOutcome design) {
        return design.batterySystem()
                .map(system -> of(system, design.brief().service()))
                .orElseGet(Html::new);
    }

    private static Html of(BatterySystem system, Service service) {
        Html html = new Html();
        ChargeSettings settings = system.chargeSettings();
        ChargerFit charger = system.chargeController();
        Settings controller = new Settings();
        controller.charging(settings, charger, system.bankLayout());
        html.table("Charge controller " + charger.product(), HEADS, controller.rows);
        system.inverter().ifPresent(inverter -> {
            Settings unit = new Settings();
            unit.inverter(settings, inverter, service);
            html.table("Inverter " + inverter.product(), HEADS, unit.rows);
        });
        system.generator().ifPresent(engine -> {
            Settings rule = new Settings();
            rule.engine(engine.size());
            html.table("Engine generator, where there is one", HEADS, rule.rows);
        });
        return html.element("p", "The battery's own instructions win over every value here.");
    }

    private void charging(ChargeSettings settings, ChargerFit charger, BankLayout bank) {
        String all = charger.count() == 1 ? "" : "all %s controllers together; ".formatted(charger.count());
        row("Battery", Words.of(bank.battery().chemistry()), Words.of(bank.nominalVoltage()) + " bus");
        row(
                "Bulk: charging current, at most",
                Words.exact(bank.maximumChargeCurrent()),
                all + "the array brings up to " + Words.of(charger.chargingCurrent()));
        row("Absorption", Words.exact(settings.absorption()), "at 25 °C");
        row("Absorption time", Words.of(settings.absorptionTime()), "held until then, or as the maker says");
        row(
                "Float",
                settings.floating().map(Words::exact).orElse("off"),
                settings.floating().isPresent() ? "at 25 °C" : "charging rests until the voltage has fallen");
        row(
                "Equalisation",
                settings.equalisation().map(Words::exact).orElse("off"),
                settings.equalisationInterval()
                        .map(interval -> "at 25 °C, every " + Words.of(interval))
                        .orElse("only vented lead-acid cells are equalised"));
        settings.equalisationTime()
                .ifPresent(time -> row("Equalisation time", Words.of(time), "top up with water afterwards"));
        boolean none = settings.compensation().equals(VoltageCoefficient.ZERO);
        row(
                "Temperature compensation",
                none ? "off" : Words.exact(settings.compensation()),
                none
                        ? "lithium is charged at the same voltage at every temperature"
                        : "of the whole bank; sensor on a battery; absorption is then %s when coldest and %s when hottest"
                                .formatted(
                                        Words.exact(settings.absorptionWhenCold()),
                                        Words.exact(settings.absorptionWhenHot())));
        row("Low-voltage disconnect", Words.exact(settings.disconnect()), "loads are switched off");
        row("Reconnect", Words.exact(settings.reconnect()), "loads come back");
        Diversion diversion = charger.diversion();
        if (diversion != null) {
            row(
                    "Diversion load",
                    "at least " + Words.of(diversion.load()),
                    "at %s: %s, at most %s"
                            .formatted(
                                    Words.exact(diversion.voltage()),
                                    Words.of(diversion.current()),
                                    Words.of(diversion.resistance())));
        }
        settings.chargingFrom()
                .ifPresent(coldest -> row("No charging below", Words.of(coldest), "temperature of the cells"));
    }

    private void inverter(ChargeSettings settings, InverterFit fit, Service service) {
        Inverter inverter = fit.inverter();
        row(
                "Low-voltage cut-off",
                Words.exact(settings.disconnect()),
                "by itself it stops at " + Words.exact(inverter.lowestInput()));
        row("Restart", Words.exact(settings.reconnect()), "");
        row(
                "AC service",
                "%s, %s".formatted(Words.of(service.voltage()), Words.of(service.frequency())),
                Words.of(service.phases()) + " phase");
        row("Units", Words.of(fit.stacking()), Words.counted(fit.count(), "unit"));
        if (fit.chargingCurrent() != null) {
            row(
                    "Charger: charging current, at most",
                    Words.exact(fit.chargingCurrent()),
                    "absorption, float and compensation as above");
            row("Charger: taken from the AC input", Words.of(fit.chargerInput()), "set the input limit no lower");
        }
        if (inverter.transferCurrent() != null) {
            row("AC input passes on, at most", Words.of(inverter.transferCurrent()), "to each line");
        }
    }

    private void engine(GeneratorSize size) {
        row("Start below", Words.percent(size.rule().startBelow()), "state of charge of the bank");
        row("Stop above", Words.percent(size.rule().stopAbove()), "the rest is left to the array");
        row("Charging current", Words.exact(size.chargeCurrent()), "from its charger into the bank");
    }

    private void row(String setting, String value, String remark) {
        rows.add(List.of(setting, value, remark));
    }
}
