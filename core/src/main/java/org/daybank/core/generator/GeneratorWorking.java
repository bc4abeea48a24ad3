package org.daybank.core.generator;

import org.daybank.core.quantity.Energy;
import org.daybank.core.working.Working;

/** How a generator's size, hours and fuel come about. */
final class GeneratorWorking {
    private GeneratorWorking() {}

    static Working of(GeneratorSize size) {
        GeneratorNeed need = size.need();
        GeneratorPolicy policy = size.policy();
        return Working.builder()
                .step(
                        "power asked",
                        "P = V · I / (η · PF) + P_loads",
                        "what the charger takes, in volt-amperes, and what runs meanwhile",
                        size.askedPower(),
                        "%s · %s / (%s · %s) + %s",
                        need.chargingVoltage(),
                        size.chargeCurrent(),
                        need.chargerEfficiency(),
                        need.chargerPowerFactor(),
                        need.concurrentLoads())
                .step(
                        "what the site leaves",
                        "k = (1 − a · h / 300 m) · (1 − b · (T − T_rated) / 5.5 K)",
                        "custom for engines without a turbocharger; the data sheet wins",
                        size.siteFactor(),
                        "(1 − %s · %s / 300 m) · (1 − %s · (%s − %s) / 5.5 K), what is below zero counts as zero",
                        policy.altitudeDerate(),
                        need.elevation(),
                        policy.heatDerate(),
                        need.hottestAir(),
                        policy.ratedAir())
                .step(
                        "required rating",
                        "P_rated ≥ max(P; (V · I / η + P_loads) / s_max) / k",
                        "load kept within its share",
                        size.requiredRating(),
                        "max(%s; (%s + %s) / %s) / %s",
                        size.askedPower(),
                        size.chargerInput(),
                        need.concurrentLoads(),
                        policy.mostLoadShare(),
                        size.siteFactor())
                .step(
                        "size",
                        "the next customary one",
                        "ISO 3 preferred numbers",
                        size.rating(),
                        "%s · at least %s",
                        size.sets(),
                        size.requiredRating().dividedBy(size.sets()))
                .step(
                        "load share at work",
                        "s = (V · I / η + P_mean) / (n · P_rated · k)",
                        "of what it gives at the site",
                        size.meanLoadShare(),
                        "(%s + %s) / %s",
                        size.chargerInput(),
                        need.meanLoads(),
                        size.sitePower())
                .step(
                        "hours of a year",
                        "t = Σ E_short / (V · I + P_mean)",
                        "it charges the bank and spares it the loads meanwhile",
                        size.yearlyHours(),
                        "%s / (%s + %s)",
                        yearlyShortfall(size),
                        size.chargePower(),
                        need.meanLoads())
                .step(
                        "fuel of a year",
                        "F = a · E_made + b · P_rated · t",
                        "typical curve of small diesel engines",
                        size.yearlyFuel(),
                        "%s L/kWh · %s + %s L/(h·kW) · %s · %s",
                        policy.litresPerKilowattHour(),
                        size.yearlyMade(),
                        policy.litresPerHourPerKilowatt(),
                        size.rating().times(size.sets()),
                        size.yearlyHours())
                .step(
                        "wear of a year",
                        "W = price · t / life",
                        "its price spread over the hours that it lasts",
                        size.yearlyWear(),
                        "%s · %s / %s",
                        size.price(),
                        size.yearlyHours(),
                        policy.serviceLife())
                .build();
    }

    private static Energy yearlyShortfall(GeneratorSize size) {
        return size.months().stream().map(GeneratorMonth::shortfall).reduce(Energy.ZERO, Energy::plus);
    }
}
