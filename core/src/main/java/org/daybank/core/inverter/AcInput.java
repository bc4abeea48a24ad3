package org.daybank.core.inverter;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/**
 * What an inverter makes of an AC source: passing it on, adding to it and charging from it.
 *
 * @param chargingCurrent into the bank; absent without source or charger
 * @param chargerInput what charging takes from the source; absent likewise
 * @param checks every rule about it; none without a source
 */
record AcInput(@Nullable Current chargingCurrent, @Nullable ApparentPower chargerInput, List<Check> checks) {
    private static final AcInput NONE = new AcInput(null, null, List.of());

    static AcInput of(
            InverterNeed need, Inverter inverter, Stack stack, int onLine, LineDemand demand, ApparentPower apparent) {
        AcSource source = need.acSource();
        if (source == null) {
            return NONE;
        }
        List<Check> checks = new ArrayList<>();
        judgeTransfer(need, source, inverter, onLine, demand, checks);
        judgeWeakSource(need, source, inverter, demand, apparent.times(onLine), checks);
        int chargers = stack.units(onLine);
        Current charging = judgeCharging(source, inverter, chargers, checks);
        return new AcInput(charging, charging == null ? null : chargerInput(need, inverter, charging), checks);
    }

    private static void judgeTransfer(
            InverterNeed need, AcSource source, Inverter inverter, int onLine, LineDemand demand, List<Check> checks) {
        Current through =
                lineCurrent(demand.peak().runningApparent(), need.service().voltage());
        Current transfer = inverter.transferCurrent();
        if (transfer == null) {
            checks.add(Check.that(InverterRule.TRANSFER_CURRENT, false, value("through", through))
                    .variant("noInput"));
        } else {
            checks.add(Check.atMost(
                    InverterRule.TRANSFER_CURRENT, through, transfer.times(onLine), value("onLine", onLine)));
        }
        TimeSpan longest = source.longestTransfer();
        TimeSpan takes = inverter.transferTime();
        if (longest != null) {
            checks.add(
                    takes == null
                            ? Check.that(InverterRule.TRANSFER_TIME, false, value("longest", longest))
                                    .variant("notStated")
                            : Check.atMost(InverterRule.TRANSFER_TIME, takes, longest));
        }
    }

    /** A source weaker than the loads' peak needs an inverter that adds what is missing. */
    private static void judgeWeakSource(
            InverterNeed need,
            AcSource source,
            Inverter inverter,
            LineDemand demand,
            ApparentPower units,
            List<Check> checks) {
        Current current = source.current();
        if (current == null) {
            return;
        }
        ApparentPower asked = demand.peak().runningApparent();
        Power given = current.times(need.service().voltage());
        if (!inverter.functions().contains(InverterFunction.ASSIST)) {
            ApparentPower most = ApparentPower.voltAmperes(given.watts());
            checks.add(Check.atMost(InverterRule.SOURCE_PEAK, asked, most));
            return;
        }
        ApparentPower added = ComplexPower.of(demand.peak().running(), asked)
                .less(new ComplexPower(given.watts(), 0))
                .apparent();
        checks.add(Check.atMost(InverterRule.SOURCE_PEAK, added, units, value("asked", asked), value("given", given))
                .variant("assisted"));
    }

    private static @Nullable Current judgeCharging(
            AcSource source, Inverter inverter, int chargers, List<Check> checks) {
        Current one = inverter.chargeCurrent();
        Current wished = source.chargingCurrent();
        if (one == null) {
            if (wished != null) {
                checks.add(Check.that(InverterRule.CHARGING_CURRENT, false, value("wished", wished))
                        .variant("noCharger"));
            }
            return null;
        }
        Current all = one.times(chargers);
        if (wished != null) {
            checks.add(Check.atLeast(InverterRule.CHARGING_CURRENT, all, wished, value("chargers", chargers)));
        }
        Current most = source.maximumChargeCurrent();
        if (most == null) {
            return all;
        }
        Current setting = inverter.leastChargeCurrent();
        Current least = (setting == null ? one : setting).times(chargers);
        checks.add(Check.atMost(InverterRule.BANK_CHARGE_CURRENT, least, most, value("chargers", chargers)));
        return all.compareTo(most) < 0 ? all : most;
    }

    private static ApparentPower chargerInput(InverterNeed need, Inverter inverter, Current charging) {
        return charging.times(need.resolved().highestBankVoltage())
                .dividedBy(inverter.chargerEfficiency().fraction())
                .atPowerFactor(inverter.chargerPowerFactor());
    }

    private static Current lineCurrent(ApparentPower apparent, Voltage voltage) {
        return Current.amperes(apparent.voltAmperes() / voltage.volts());
    }
}
