package org.daybank.api.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.daybank.core.array.ArraySize;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.design.BackupDesign;
import org.daybank.core.design.BatterySystem;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignEvidence;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.EnergyBalance;
import org.daybank.core.design.EssentialPanel;
import org.daybank.core.design.GridDesign;
import org.daybank.core.design.GridSystem;
import org.daybank.core.design.StandAloneDesign;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.sun.Plane;

/** What the system is and does, in plain words. */
final class Summary {
    private final DesignOutcome design;
    private final DesignBrief brief;
    private final List<String> sentences = new ArrayList<>();

    private Summary(DesignOutcome design) {
        this.design = design;
        this.brief = design.brief();
    }

    static Html of(DesignOutcome design) {
        Summary summary = new Summary(design);
        if (design instanceof StandAloneDesign standAlone) {
            summary.onBank(standAlone.system(), standAlone.energy(), standAlone.evidence());
        } else if (design instanceof BackupDesign backup) {
            summary.onBank(backup.system(), backup.energy(), backup.evidence());
            summary.panel(backup.essentialPanel());
        } else if (design instanceof GridDesign grid) {
            summary.feed(grid);
        } else {
            summary.say("No parts of the catalogue make a system for this brief. The reasons follow.");
            summary.loads();
        }
        design.billOfMaterials()
                .ifPresent(bill -> summary.say(
                        "The parts cost %s; cable, protection, mounting and work are not in that price.",
                        bill.total()));
        Html html = new Html();
        summary.sentences.forEach(sentence -> html.element("p", sentence));
        return html;
    }

    private void say(String sentence, Object... values) {
        Object[] shown = Arrays.stream(values)
                .map(value -> value instanceof Quantity quantity ? quantity.rounded(3) : value)
                .map(value -> value instanceof Ratio ratio ? ratio.rounded() : value)
                .toArray();
        sentences.add(String.format(Locale.ROOT, sentence, shown));
    }

    private void loads() {
        MonthBudget heaviest = design.budget().heaviestMonth();
        say(
                "%s of the brief take the most in %s: %s a day leave the bank, conversion losses included.",
                Words.counted(brief.loads().size(), "load"),
                Words.whole(heaviest.month()),
                Words.of(heaviest.dailyEnergy()));
    }

    private void onBank(BatterySystem system, EnergyBalance energy, DesignEvidence evidence) {
        array(system.chargeController());
        BankLayout bank = system.bankLayout();
        say(
                "%s %s, %s in series and %s in parallel, %s %s at %s. %s the loads for %s without any sun.",
                Words.counted(bank.count(), "battery"),
                bank.product(),
                bank.series(),
                bank.parallel(),
                bank.count() == 1 ? "stores" : "store",
                Words.of(bank.ratedEnergy()),
                Words.of(bank.nominalVoltage()),
                bank.count() == 1 ? "It carries" : "They carry",
                Words.of(brief.policy().bank().autonomy()));
        system.inverter()
                .ifPresentOrElse(
                        this::inverter, () -> say("Every load runs on the bank's own voltage; there is no inverter."));
        balance(energy.monthlyBalance());
        energy.recovery()
                .ifPresent(recovery -> say(
                        "In the design month the array refills the bank from its deepest discharge in %s.",
                        Words.of(recovery)));
        say(
                "Tracking the modules' maximum power point brings %s more in a year than charging at the bank's own"
                        + " voltage.",
                Words.percent(energy.mpptGain().yearlyGain()));
        evidence.availability().ifPresent(this::reliability);
        system.generator()
                .ifPresent(engine -> say(
                        "An engine generator of %s would raise that to %s of the hours, running %s a year.",
                        Words.of(engine.size().rating()),
                        Words.percent(engine.availability().availability()),
                        Words.hours(engine.availability().engineTime())));
        evidence.batteryLife()
                .ifPresent(life -> say(
                        "In this use the bank lasts %s; a kilowatt-hour out of it costs %s.",
                        Words.years(life.life()), life.costPerKilowattHour()));
    }

    private void array(ChargerFit charger) {
        var array = charger.array();
        say(
                "%s %s (%s) %s and %s the bank through %s %s.",
                Words.counted(array.modules(), "module"),
                array.product(),
                Words.of(array.power()),
                lying(array.modules(), design.sun().plane()),
                array.modules() == 1 ? "charges" : "charge",
                charger.count() == 1 ? "the charge controller" : charger.count() + " charge controllers",
                charger.product());
    }

    private void inverter(InverterFit inverter) {
        say(
                "%s %s %s %s; the loads ask %s at their peak and %s %s.",
                Words.counted(inverter.count(), "inverter"),
                inverter.product(),
                inverter.count() == 1 ? "makes" : "make",
                service(),
                Words.of(design.budget().peak().running()),
                inverter.count() == 1 ? "it gives" : "they give",
                Words.of(inverter.rating()));
    }

    private void balance(ArraySize balance) {
        if (balance.possible()) {
            var hardest = balance.inDesignMonth();
            say(
                    "The hardest month is %s: %s a day are needed and the array brings %s, %s times as much.",
                    Words.whole(hardest.month()),
                    Words.of(hardest.need()),
                    Words.of(hardest.yield()),
                    Words.times(hardest.arrayToLoadRatio()));
        }
    }

    private void reliability(Reliability found) {
        if (found.lossOfLoad().hours() == 0) {
            say(
                    "Run hour by hour through %s, every load gets all it asks in every hour. The bank falls to %s at"
                            + " the lowest.",
                    Words.counted(found.years(), "year"), Words.percent(found.lowestStateOfCharge()));
        } else {
            say(
                    "Run hour by hour through %s, every load gets all it asks in %s of the hours; in a year something"
                            + " is lacking for %s, at the longest for %s on end. The bank falls to %s at the lowest.",
                    Words.counted(found.years(), "year"),
                    Words.percent(found.availability()),
                    Words.hours(found.lossOfLoad()),
                    Words.hours(found.longestOutage()),
                    Words.percent(found.lowestStateOfCharge()));
        }
    }

    private void panel(EssentialPanel panel) {
        say("While the grid is away the bank carries the essential loads: %s.", String.join(", ", panel.loads()));
        say(
                "In an outage without any sun the full bank carries them for %s on average, and for %s at the least.",
                Words.hours(panel.backup().mean()), Words.hours(panel.backup().shortest()));
        panel.wholeHouse()
                .ifPresent(house -> say(
                        "Backing up every load instead would take a bank of %s and an array of %s for %s in place of %s.",
                        Words.of(house.bank()), Words.of(house.array()), house.price(), panel.price()));
    }

    private void feed(GridDesign grid) {
        GridSystem system = grid.system();
        say(
                "%s %s (%s) %s and %s the grid (%s) through %s.",
                Words.counted(system.modules(), "module"),
                system.module(),
                Words.of(system.arrayPower()),
                lying(system.modules(), design.sun().plane()),
                system.modules() == 1 ? "feeds" : "feed",
                service(),
                system.stringInverters()
                        .map(fit -> Words.counted(fit.count(), "string inverter") + " " + fit.product())
                        .or(() -> system.microinverters()
                                .map(fit -> Words.counted(fit.count(), "microinverter") + " " + fit.product()))
                        .orElse("inverters"));
        say(
                "By its months a year brings %s; the loads use %s%s. There is no bank: when the grid is away, nothing"
                        + " runs.",
                Words.of(grid.energy().yearlyYield()),
                Words.of(grid.energy().yearlyUse()),
                grid.energy()
                        .coverage()
                        .map(coverage -> ", so that the yield is %s of the use".formatted(Words.percent(coverage)))
                        .orElse(""));
        grid.evidence()
                .flows()
                .ifPresent(flows -> say(
                        "Run hour by hour, a year brings %s: %s of it is used at once, %s come from the grid and %s go into it.",
                        Words.of(flows.yearly().array()),
                        Words.percent(flows.selfUseShare()),
                        Words.of(flows.yearly().imported()),
                        Words.of(flows.yearly().exported())));
        grid.evidence()
                .bill()
                .ifPresent(bill -> say(
                        "The yearly bill falls from %s to %s%s.",
                        bill.yearlyWithoutSystem(),
                        bill.yearlyWithSystem(),
                        bill.payBack() == null
                                ? ""
                                : "; the parts have paid for themselves after " + Words.years(bill.payBack())));
        grid.alternatives()
                .otherInverterKind()
                .ifPresent(price -> say(
                        "With %s the modules and inverters would cost %s.",
                        system.stringInverters().isPresent() ? "microinverters" : "string inverters", price));
    }

    private String service() {
        Service service = brief.service();
        return "%s, %s, %s phase"
                .formatted(Words.of(service.voltage()), Words.of(service.frequency()), Words.of(service.phases()));
    }

    /** How an array of so many modules lies. */
    private static String lying(int modules, Plane plane) {
        if (plane.tilt().degrees() == 0) {
            return modules == 1 ? "lies flat" : "lie flat";
        }
        return "%s %s at a tilt of %s"
                .formatted(modules == 1 ? "faces" : "face", facing(plane.azimuth()), Words.of(plane.tilt()));
    }

    /** The azimuth with its nearest name. */
    private static String facing(Angle azimuth) {
        return "%s (%s)".formatted(Compass.nearest(azimuth), Words.of(azimuth));
    }
}
