package org.daybank.api.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.daybank.core.array.ArraySize;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.design.BillOfMaterials;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.EssentialPanel;
import org.daybank.core.design.GridFeed;
import org.daybank.core.design.SystemDesign;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.sun.Plane;
import org.jspecify.annotations.Nullable;

/** What the system is and does, in plain words. */
final class Summary {
    private final SystemDesign design;
    private final DesignBrief brief;
    private final List<String> sentences = new ArrayList<>();

    private Summary(SystemDesign design) {
        this.design = design;
        this.brief = design.brief();
    }

    static Html of(SystemDesign design) {
        Summary summary = new Summary(design);
        GridFeed feed = design.grid();
        if (!design.complete()) {
            summary.say(
                    "No parts of the catalogue make a system that does what was asked. What stood in the way follows.");
            summary.loads();
        } else if (feed != null) {
            summary.feed(feed);
        } else {
            summary.onBank();
        }
        summary.price(design.billOfMaterials());
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
        MonthBudget heaviest = design.energyBudget().heaviestMonth();
        say(
                "%s of the brief take the most in %s: %s a day leave the bank, conversion losses included.",
                Words.counted(brief.loads().size(), "load"),
                Words.whole(heaviest.month()),
                Words.of(heaviest.dailyEnergy()));
    }

    private void onBank() {
        array();
        BankLayout bank = design.bank() == null ? null : design.bank().layout();
        if (bank != null) {
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
        }
        inverter(design.inverter());
        balance(design.monthlyBalance());
        if (design.recovery() != null) {
            say(
                    "In the design month the array refills the bank from its deepest discharge in %s.",
                    Words.of(design.recovery()));
        }
        if (design.trackingGain() != null) {
            say(
                    "Tracking the modules' maximum power point brings %s more in a year than charging at the bank's own"
                            + " voltage.",
                    Words.percent(design.trackingGain().yearlyGain()));
        }
        reliability(design.availability());
        if (design.generator() != null) {
            var engine = design.generator();
            say(
                    "An engine generator of %s would raise that to %s of the hours, running %s a year.",
                    Words.of(engine.size().rating()),
                    Words.percent(engine.availability().availability()),
                    Words.hours(engine.availability().engineTime()));
        }
        if (design.batteryLife() != null) {
            var life = design.batteryLife();
            say(
                    "In this use the bank lasts %s; a kilowatt-hour out of it costs %s.",
                    Words.years(life.life()), life.costPerKilowattHour());
        }
        panel(design.essentialPanel());
    }

    private void array() {
        var charger = design.charger();
        if (charger != null) {
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
    }

    private void inverter(@Nullable InverterFit inverter) {
        if (inverter == null) {
            say("Every load runs on the bank's own voltage; there is no inverter.");
        } else {
            say(
                    "%s %s %s %s; the loads ask %s at their peak and %s %s.",
                    Words.counted(inverter.count(), "inverter"),
                    inverter.product(),
                    inverter.count() == 1 ? "makes" : "make",
                    service(),
                    Words.of(design.energyBudget().peak().running()),
                    inverter.count() == 1 ? "it gives" : "they give",
                    Words.of(inverter.rating()));
        }
    }

    private void balance(@Nullable ArraySize balance) {
        if (balance != null && balance.possible()) {
            var hardest = balance.inDesignMonth();
            say(
                    "The hardest month is %s: %s a day are needed and the array brings %s, %s times as much.",
                    Words.whole(hardest.month()),
                    Words.of(hardest.need()),
                    Words.of(hardest.yield()),
                    Words.times(hardest.arrayToLoadRatio()));
        }
    }

    private void reliability(@Nullable Reliability found) {
        if (found != null && found.lossOfLoad().hours() == 0) {
            say(
                    "Run hour by hour through %s, every load gets all it asks in every hour. The bank falls to %s at"
                            + " the lowest.",
                    Words.counted(found.years(), "year"), Words.percent(found.lowestStateOfCharge()));
        } else if (found != null) {
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

    private void panel(@Nullable EssentialPanel panel) {
        if (panel != null) {
            say("While the grid is away the bank carries the essential loads: %s.", String.join(", ", panel.loads()));
            say(
                    "In an outage without any sun the full bank carries them for %s on average, and for %s at the"
                            + " least.",
                    Words.hours(panel.backup().mean()),
                    Words.hours(panel.backup().shortest()));
            if (panel.wholePrice() != null) {
                say(
                        "Backing up every load instead would take a bank of %s and an array of %s for %s in place"
                                + " of %s.",
                        Words.of(panel.wholeBank()), Words.of(panel.wholeArray()), panel.wholePrice(), panel.price());
            }
        }
    }

    private void feed(GridFeed feed) {
        var strings = feed.stringInverters();
        var units = feed.microinverters();
        say(
                "%s %s (%s) %s and %s the grid (%s) through %s.",
                Words.counted(feed.modules(), "module"),
                feed.module(),
                Words.of(feed.arrayPower()),
                lying(feed.modules(), design.sun().plane()),
                feed.modules() == 1 ? "feeds" : "feed",
                service(),
                strings != null
                        ? Words.counted(strings.count(), "string inverter") + " " + strings.product()
                        : units != null
                                ? Words.counted(units.count(), "microinverter") + " " + units.product()
                                : "inverters");
        say(
                "By its months a year brings %s; the loads use %s%s. There is no bank: when the grid is away, nothing"
                        + " runs.",
                Words.of(feed.yearlyYield()),
                Words.of(feed.yearlyUse()),
                feed.coverage() == null
                        ? ""
                        : ", so that the yield is %s of the use".formatted(Words.percent(feed.coverage())));
        if (feed.flows() != null) {
            say(
                    "Run hour by hour, a year brings %s: %s of it is used at once, %s come from the grid and %s go into it.",
                    Words.of(feed.flows().yearly().array()),
                    Words.percent(feed.flows().selfUseShare()),
                    Words.of(feed.flows().yearly().imported()),
                    Words.of(feed.flows().yearly().exported()));
        }
        if (feed.bill() != null) {
            say(
                    "The yearly bill falls from %s to %s%s.",
                    feed.bill().yearlyWithoutSystem(),
                    feed.bill().yearlyWithSystem(),
                    feed.bill().payBack() == null
                            ? ""
                            : "; the parts have paid for themselves after "
                                    + Words.years(feed.bill().payBack()));
        }
        if (feed.otherKind() != null) {
            say(
                    "With %s the modules and inverters would cost %s.",
                    strings != null ? "microinverters" : "string inverters", feed.otherKind());
        }
    }

    private void price(@Nullable BillOfMaterials bill) {
        if (bill != null) {
            say("The parts cost %s; cable, protection, mounting and work are not in that price.", bill.total());
        }
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
