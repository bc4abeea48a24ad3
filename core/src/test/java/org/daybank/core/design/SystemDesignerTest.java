package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.alternatives;
import static org.daybank.core.design.Designs.batteries;
import static org.daybank.core.design.Designs.controllers;
import static org.daybank.core.design.Designs.energy;
import static org.daybank.core.design.Designs.inverters;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.none;
import static org.daybank.core.design.Designs.rejectedVoltages;
import static org.daybank.core.design.Designs.system;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.daybank.core.Refused;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ControllerFunction;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.inverter.InverterFunction;
import org.daybank.core.inverter.Phases;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadKind;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.PlaneOfArray;
import org.daybank.core.sun.SunMonth;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.junit.jupiter.api.Test;

class SystemDesignerTest {
    private static final Catalog SAMPLE = Catalog.sample();
    private static final DesignOutcome LARKSPUR = SystemDesigner.design(LarkspurRidge.BRIEF, SAMPLE);

    private static DesignOutcome design(DesignBrief brief) {
        return SystemDesigner.design(brief, SAMPLE);
    }

    private static DesignBrief dcOnly() {
        return LarkspurRidge.BRIEF.withLoads(LarkspurRidge.LOADS.stream()
                .filter(load -> load.supply() == Supply.DC)
                .toList());
    }

    @Test
    void withoutAcLoadsThereIsNoInverter() {
        DesignOutcome design = design(dcOnly());

        assertThat(isDesign(design)).isTrue();
        assertThat(system(design).inverter()).isEmpty();
        assertThat(inverters(design)).isEmpty();
        assertThat(design.billOfMaterials().orElseThrow().lines())
                .extracting(BillLine::part)
                .containsExactly("module", "chargeController", "battery");
        // 23.5 W are no burden for 12 V
        assertThat(system(design).nominalVoltage()).isEqualTo(Voltage.volts(12));
        assertThat(rejectedVoltages(design)).isEmpty();
        // 564 Wh / 0.97 = 581.443 Wh and what the controller draws, nothing for an inverter
        assertThat(design.budget().in(Month.JULY).inverterLoss().wattHours()).isCloseTo(0, within(1e-9));
        assertThat(design.budget().in(Month.JULY).dailyEnergy().wattHours())
                .isCloseTo(
                        581.4433
                                + 24
                                        * system(design)
                                                .chargeController()
                                                .controller()
                                                .selfConsumption()
                                                .watts()
                                        * system(design).chargeController().count(),
                        within(1e-4));
    }

    @Test
    void aBankIndoorsNeedsNoHeater() {
        DesignOutcome design = design(LarkspurRidge.BRIEF
                .withWishes(Wishes.none().withChemistries(List.of(Chemistry.LITHIUM_IRON_PHOSPHATE)))
                .withBank(new BankHousing(BankLocation.INDOORS, null, null, null)));

        // the room gets down to 15 °C, where lithium delivers 0.95 + 0.05 · 5/15 = 0.966667
        assertThat(system(design).bank().heated()).isFalse();
        assertThat(Objects.requireNonNull(system(design).bank().capacity())
                        .temperatureFactor()
                        .fraction())
                .isCloseTo(0.966667, within(1e-6));
        assertThat(design.budget().in(Month.JANUARY).standingEnergy())
                .isEqualTo(design.budget().in(Month.JULY).standingEnergy());
        // nothing costs more than in the cold
        assertThat(design.billOfMaterials().orElseThrow().total())
                .isLessThan(LARKSPUR.billOfMaterials().orElseThrow().total());
    }

    @Test
    void theSettingsLetItChargeFromWhereTheChosenBatteryMay() {
        Catalog cautious = new Catalog(
                SAMPLE.modules(),
                SAMPLE.batteries().stream()
                        .map(battery -> battery.withColdestCharge(Temperature.celsius(3)))
                        .toList(),
                SAMPLE.controllers(),
                SAMPLE.inverters());
        DesignOutcome design = SystemDesigner.design(
                LarkspurRidge.BRIEF
                        .withWishes(Wishes.none().withChemistries(List.of(Chemistry.LITHIUM_IRON_PHOSPHATE)))
                        .withBank(new BankHousing(BankLocation.INDOORS, null, null, null)),
                cautious);

        assertThat(system(design).chargeSettings().chargingFrom()).contains(Temperature.celsius(3));
    }

    @Test
    void aHeaterIndoorsWarmsFromWhatTheRoomIs() {
        DesignOutcome design = design(LarkspurRidge.BRIEF
                .withWishes(Wishes.none().withChemistries(List.of(Chemistry.LITHIUM_IRON_PHOSPHATE)))
                .withBank(new BankHousing(BankLocation.INDOORS, Temperature.celsius(-2), null, null)));

        assertThat(system(design).bank().heated()).isTrue();
        // January: −6.1 °C outside, but the room gets no colder than −2 °C: 1.2 W/K · (5 − (−2)) K · 24 h = 201.6 Wh a
        // day
        // more than in July, when the room is warmer than the set point
        assertThat(design.budget().in(Month.JANUARY).standingEnergy().wattHours()
                        - design.budget().in(Month.JULY).standingEnergy().wattHours())
                .isCloseTo(201.6, within(1e-9));
    }

    @Test
    void wishesForAChemistry() {
        for (Chemistry chemistry : Chemistry.values()) {
            DesignOutcome design =
                    design(LarkspurRidge.BRIEF.withWishes(Wishes.none().withChemistries(List.of(chemistry))));

            assertThat(isDesign(design))
                    .as("%s: %s", chemistry, rejectedVoltages(design))
                    .isTrue();
            assertThat(system(design).bankLayout().battery().chemistry()).isEqualTo(chemistry);
            assertThat(alternatives(design).designs())
                    .allSatisfy(other -> assertThat(other.chemistry()).isEqualTo(chemistry));
        }
    }

    @Test
    void aChemistryThatNoControllerCanBeSetUpForIsNamed() {
        Catalog sample = Catalog.sample();
        Catalog lithiumOnly = new Catalog(
                sample.modules(),
                sample.batteries(),
                sample.controllers().stream()
                        .map(controller -> controller.withChemistries(List.of(Chemistry.LITHIUM_IRON_PHOSPHATE)))
                        .toList(),
                sample.inverters());
        DesignOutcome design = SystemDesigner.design(
                LarkspurRidge.BRIEF.withWishes(Wishes.none().withChemistries(List.of(Chemistry.AGM))), lithiumOnly);

        assertThat(isDesign(design)).isFalse();
        assertThat(rejectedVoltages(design))
                .flatExtracting(RejectedVoltage::failedChecks)
                .extracting(reason -> reason.message().toString())
                .contains("No charge controller of the catalogue works at 48 V and can be set up for AGM.");
    }

    @Test
    void wishesForAVoltage() {
        DesignOutcome small = design(dcOnly().withWishes(Wishes.none().withNominalVoltage(Voltage.volts(24))));
        assertThat(isDesign(small)).isTrue();
        assertThat(system(small).nominalVoltage()).isEqualTo(Voltage.volts(24));
        assertThat(rejectedVoltages(small)).isEmpty();

        // the pump's start at 24 V draws too much from the bank: a brief that insists gets the reason
        DesignOutcome refused =
                design(LarkspurRidge.BRIEF.withWishes(Wishes.none().withNominalVoltage(Voltage.volts(24))));
        assertThat(isDesign(refused)).isFalse();
        assertThat(rejectedVoltages(refused))
                .extracting(RejectedVoltage::voltage)
                .containsExactly(Voltage.volts(24));
        assertThat(rejectedVoltages(refused).get(0).failedChecks())
                .extracting(check -> check.rule().code())
                .containsExactly("bankCurrent");
    }

    @Test
    void wishesForFunctions() {
        DesignOutcome design = design(LarkspurRidge.BRIEF.withWishes(Wishes.none()
                .withControllerFunctions(List.of(ControllerFunction.GENERATOR_START))
                .withInverterFunctions(List.of(InverterFunction.CHARGER))));

        assertThat(system(design).chargeController().controller().functions())
                .contains(ControllerFunction.GENERATOR_START);
        assertThat(system(design).inverter().orElseThrow().inverter().functions())
                .contains(InverterFunction.CHARGER);
    }

    @Test
    void southOfTheEquatorTheArrayFacesNorthAndWinterIsJune() {
        Site north = LarkspurRidge.SITE;
        List<Irradiation> sun =
                new ArrayList<>(Objects.requireNonNull(north.months().dailyIrradiation()));
        List<Temperature> air = new ArrayList<>(north.months().meanAir());
        Collections.rotate(sun, 6);
        Collections.rotate(air, 6);
        Site south = SiteBuilder.builder(north)
                .latitude(Latitude.degrees(-46.87))
                .months(MonthlyClimateBuilder.builder()
                        .dailyIrradiation(sun)
                        .meanAir(air)
                        .build())
                .build();

        DesignOutcome design =
                design(LarkspurRidge.BRIEF.withSite(south).withArray(new ArrayWish(Angle.degrees(60), null, null)));

        assertThat(design.sun().plane().azimuth()).isEqualTo(Angle.ZERO);
        assertThat(energy(design).monthlyBalance().designMonth()).isEqualTo(Month.JUNE);
        assertThat(design.budget().heaviestRun().month()).isEqualTo(Month.JULY);
        // June is 0.06° lower in the sky than December in the north, and the sun 6.5 % weaker outside the air: the same
        // irradiation means clearer days with more beam. It takes no more than the array of the north.
        assertThat(energy(design).monthlyBalance().exactModules())
                .isLessThan(energy(LARKSPUR).monthlyBalance().exactModules());
        assertThat(system(design).bank().product())
                .isEqualTo(system(LARKSPUR).bank().product());
    }

    @Test
    void withoutATiltTheBestIsFound() {
        DesignOutcome free = design(LarkspurRidge.BRIEF.withArray(ArrayWish.free()));

        assertThat(free.sun().plane().azimuth()).isEqualTo(Angle.degrees(180));
        // December, the hardest month, gets no more at any tilt
        SunMonth best = free.sun().in(Month.DECEMBER);
        for (int tilt = 0; tilt <= 90; tilt += 5) {
            SunMonth other = PlaneOfArray.monthly(
                            LarkspurRidge.SITE,
                            new Plane(Angle.degrees(tilt), Angle.degrees(180)),
                            LarkspurRidge.BRIEF.policy().sun())
                    .in(Month.DECEMBER);
            // a hundredth of a degree off the best
            assertThat(other.planeOfArray().wattHoursPerSquareMetre())
                    .isLessThanOrEqualTo(best.planeOfArray().wattHoursPerSquareMetre() + 0.01);
        }
    }

    @Test
    void inPolarNightNothingIsCompleteAndNothingThrown() {
        Site polar = SiteBuilder.builder(LarkspurRidge.SITE)
                .latitude(Latitude.degrees(75))
                .months(MonthlyClimateBuilder.builder()
                        .dailyIrradiation(Arrays.stream(new double[] {0, .3, 1.4, 3.2, 4.8, 5, 4.4, 2.8, 1.3, .4, 0, 0})
                                .mapToObj(Irradiation::kilowattHoursPerSquareMetre)
                                .toList())
                        .meanAir(LarkspurRidge.SITE.months().meanAir())
                        .build())
                .build();

        DesignOutcome design = design(LarkspurRidge.BRIEF.withSite(polar));

        assertIncomplete(design);
        assertThat(rejectedVoltages(design))
                .extracting(RejectedVoltage::voltage)
                .containsExactly(Voltage.volts(12), Voltage.volts(24), Voltage.volts(48));
        assertThat(rejectedVoltages(design).get(2).failedChecks())
                .extracting(check -> check.rule().code())
                .containsExactly("array");
        // no controller helps: each says so, besides what else is wrong with it
        assertThat(controllers(design).ranked()).isEmpty();
        assertThat(controllers(design).rejected())
                .hasSameSizeAs(SAMPLE.controllers())
                .allSatisfy(rejection -> assertThat(rejection.failedChecks())
                        .extracting(check -> check.rule().code())
                        .contains("array"));
    }

    @Test
    void anAntarcticPlateauIsRefusedAtAFieldOfTheBrief() {
        // means of −27 °C to −60 °C, once −82.8 °C: halfway from the coldest month to that it is −71.4 °C around the
        // bank
        Site pole = SiteBuilder.builder()
                .latitude(Latitude.degrees(-90))
                .recordLow(Temperature.celsius(-82.8))
                .months(MonthlyClimateBuilder.builder()
                        .dailyIrradiation(Arrays.stream(new double[] {9, 5, 1, 0, 0, 0, 0, 0, 0, 4, 8, 10})
                                .mapToObj(Irradiation::kilowattHoursPerSquareMetre)
                                .toList())
                        .meanAir(DoubleStream.of(-28, -41, -54, -57, -58, -58, -60, -60, -59, -51, -38, -27)
                                .mapToObj(Temperature::celsius)
                                .toList())
                        .build())
                .build();

        assertThat(Refused.places(() -> design(LarkspurRidge.BRIEF.withSite(pole))))
                .containsExactly("/site/recordLow");
    }

    @Test
    void whereNothingIsCompleteEveryProductAnswers() {
        // the pump's start at 24 V draws too much from the bank, so that no inverter fits
        DesignOutcome refused = design(LarkspurRidge.BRIEF.withWishes(
                new Wishes(Voltage.volts(24), List.of(Chemistry.GEL), null, null, null, null)));

        assertIncomplete(refused);
        assertThat(inverters(refused).orElseThrow().ranked()).isEmpty();
        assertThat(inverters(refused).orElseThrow().rejected())
                .filteredOn(rejection -> rejection.product().equals("WR-S5000-48"))
                .flatExtracting(Rejection::failedChecks)
                .extracting(check -> check.rule().code())
                // made for another bus; 4200 W / 0.915 / 42 V = 109 A would do
                .containsExactly("nominalVoltage");
        // batteries of another chemistry fail by the wish, whatever they could carry
        assertThat(batteries(refused).rejected())
                .filteredOn(rejection -> rejection.product().startsWith("BK-L"))
                .hasSize(7)
                .allSatisfy(rejection -> assertThat(rejection.failedChecks())
                        .extracting(check -> check.rule().code())
                        .contains("chemistry"));
        assertThat(controllers(refused).rejected())
                .filteredOn(rejection -> rejection.product().equals("HN-T10"))
                .flatExtracting(Rejection::failedChecks)
                .extracting(check -> check.rule().code())
                .contains("busVoltage");
    }

    @Test
    void whatNoInverterMakes() {
        Service odd = new Service(Voltage.volts(160), Frequency.hertz(50), Phases.SINGLE);

        DesignOutcome design = design(LarkspurRidge.BRIEF.withService(odd));

        assertIncomplete(design);
        assertThat(rejectedVoltages(design).get(2).failedChecks())
                .extracting(check -> check.rule().code())
                .contains("outputVoltage");
    }

    @Test
    void eachEmptyShelfIsTheReason() {
        assertReason(
                new Catalog(SAMPLE.modules(), SAMPLE.batteries(), SAMPLE.controllers(), List.of()),
                "inverter",
                "The catalogue has no inverters.");
        assertReason(
                new Catalog(SAMPLE.modules(), List.of(), SAMPLE.controllers(), SAMPLE.inverters()),
                "battery",
                "The catalogue has no batteries.");
        assertReason(
                new Catalog(SAMPLE.modules(), SAMPLE.batteries(), List.of(), SAMPLE.inverters()),
                "chargeController",
                "The catalogue has no charge controllers.");
        assertReason(
                new Catalog(List.of(), SAMPLE.batteries(), SAMPLE.controllers(), SAMPLE.inverters()),
                "array",
                "The catalogue has no modules.");
    }

    private static void assertReason(Catalog catalog, String rule, String message) {
        DesignOutcome design = SystemDesigner.design(LarkspurRidge.BRIEF, catalog);
        assertIncomplete(design);
        assertThat(rejectedVoltages(design).get(2).failedChecks())
                .extracting(check -> check.rule().code())
                .containsExactly(rule);
        assertThat(none(design).failedChecks()).singleElement().satisfies(check -> {
            assertThat(check.rule().code()).isEqualTo(rule);
            assertThat(check.message().toString()).isEqualTo(message);
        });
    }

    private static void assertIncomplete(DesignOutcome design) {
        assertThat(isDesign(design)).isFalse();
        assertThat(rejectedVoltages(design))
                .isNotEmpty()
                .allSatisfy(voltage ->
                        assertThat(voltage.failedChecks()).isNotEmpty().noneMatch(Check::passed));
        assertThat(none(design).failedChecks()).isNotEmpty().noneMatch(Check::passed);
        assertThat(design.billOfMaterials()).isEmpty();
        assertThat(design.hazards()).isEmpty();
        assertThat(design.working().steps()).isNotEmpty();
    }

    @Test
    void alternativesCostMoreAndSayHowMuch() {
        assertThat(alternatives(LARKSPUR).designs())
                .hasSize(3)
                .isSortedAccordingTo(
                        (a, b) -> a.bill().total().compareTo(b.bill().total()));
        assertThat(alternatives(LARKSPUR).designs())
                .allSatisfy(other -> assertThat(
                                LARKSPUR.billOfMaterials().orElseThrow().total().plus(other.dearerBy()))
                        .isEqualTo(other.bill().total()));
        DesignPolicy many = LarkspurRidge.BRIEF
                .policy()
                .withSystem(LarkspurRidge.BRIEF.policy().system().withAlternatives(20));
        List<Alternative> all =
                alternatives(design(LarkspurRidge.BRIEF.withPolicy(many))).designs();
        assertThat(all).startsWith(alternatives(LARKSPUR).designs().toArray(new Alternative[0]));
        // the three other chemistries at the only voltage that does, and the same chemistry charged in another way
        assertThat(all)
                .extracting(Alternative::chemistry)
                .contains(Chemistry.VENTED_LEAD_ACID, Chemistry.AGM, Chemistry.GEL);
        Chemistry chosen = system(LARKSPUR).bankLayout().battery().chemistry();
        ControllerKind kind = system(LARKSPUR).chargeController().controller().kind();
        assertThat(all)
                .isNotEmpty()
                .noneMatch(other -> other.chemistry() == chosen
                        && other.controllerKind() == kind
                        && other.nominalVoltage().equals(system(LARKSPUR).nominalVoltage()));
        assertThat(all).anyMatch(other -> other.chemistry() == chosen && other.controllerKind() != kind);
        DesignPolicy one = LarkspurRidge.BRIEF
                .policy()
                .withSystem(LarkspurRidge.BRIEF.policy().system().withAlternatives(1));
        assertThat(alternatives(design(LarkspurRidge.BRIEF.withPolicy(one))).designs())
                .containsExactly(alternatives(LARKSPUR).designs().get(0));
    }

    @Test
    void aLongerAutonomyIsNoCheaper() {
        List<AutonomyPoint> points = alternatives(LARKSPUR).autonomyPrices();
        // half to twice the three days asked for; that of three days is the design itself
        assertThat(points).extracting(point -> point.autonomy().days()).containsExactly(1.5, 3.0, 4.5, 6.0);
        assertThat(points).isSortedAccordingTo((a, b) -> a.price().compareTo(b.price()));
        assertThat(points.get(1).price())
                .isEqualTo(LARKSPUR.billOfMaterials().orElseThrow().total());
    }

    @Test
    void aPostOfTwoLinesGivesHalfItsPowerOnEach() {
        // 2000 W over two lines are 1000 W on each. The kettle asks 1500 VA of one line.
        Service split = new Service(Voltage.volts(120), Frequency.hertz(60), Phases.SPLIT);
        DesignBrief post = LarkspurRidge.BRIEF
                .withKind(SystemKind.MOBILE)
                .withService(split)
                .withShore(new ShorePower(Power.watts(2000), null, null))
                .withLoads(List.of(LoadBuilder.builder()
                        .name("kettle")
                        .kind(LoadKind.RESISTIVE)
                        .power(Power.watts(1500))
                        .hoursPerDay(0.2)
                        .build()));
        List<Check> peaks = Stream.concat(
                        inverters(design(post)).orElseThrow().ranked().stream().flatMap(fit -> fit.checks().stream()),
                        inverters(design(post)).orElseThrow().rejected().stream()
                                .flatMap(rejection -> rejection.failedChecks().stream()))
                .filter(check -> check.rule().code().equals("sourcePeak"))
                .toList();
        // where the inverter adds what the post lacks: 1500 − 1000 = 500 VA; where it cannot, 1500 VA are asked of 1000
        // VA
        assertThat(peaks).isNotEmpty();
        assertThat(peaks)
                .extracting(check -> (ApparentPower) check.value().orElseThrow())
                .containsAnyOf(ApparentPower.voltAmperes(500), ApparentPower.voltAmperes(1500))
                .isSubsetOf(ApparentPower.voltAmperes(500), ApparentPower.voltAmperes(1500));
    }

    @Test
    void theSameAnswerEveryTimeOnAnyThread() {
        List<DesignOutcome> again = IntStream.range(0, 4)
                .parallel()
                .mapToObj(i -> design(LarkspurRidge.BRIEF))
                .toList();
        assertThat(again).containsOnly(LARKSPUR);
    }

    @Test
    void theOrderOfLoadsAndProductsIsIrrelevant() {
        List<Load> loads = new ArrayList<>(LarkspurRidge.LOADS);
        Collections.reverse(loads);
        Catalog reversed = new Catalog(
                reversed(SAMPLE.modules()),
                reversed(SAMPLE.batteries()),
                reversed(SAMPLE.controllers()),
                reversed(SAMPLE.inverters()));

        DesignOutcome design = SystemDesigner.design(LarkspurRidge.BRIEF.withLoads(loads), reversed);

        assertThat(design.billOfMaterials()).isEqualTo(LARKSPUR.billOfMaterials());
        assertThat(design.budget().heaviestRun().worstDailyEnergy().wattHours())
                .isCloseTo(LARKSPUR.budget().heaviestRun().worstDailyEnergy().wattHours(), within(1e-9));
    }

    private static <T> List<T> reversed(List<T> products) {
        List<T> reversed = new ArrayList<>(products);
        Collections.reverse(reversed);
        return reversed;
    }

    @Test
    void unitsDoNotMatter() {
        List<Load> kilowatts = LarkspurRidge.LOADS.stream()
                .map(load -> load.withPower(Power.kilowatts(load.power().watts() / 1000)))
                .toList();
        Site site = SiteBuilder.builder(LarkspurRidge.SITE)
                .elevation(Length.parse("4396.325459317585 ft"))
                .recordLow(Temperature.parse("-20.2 °F"))
                .recordHigh(Temperature.kelvins(307.15))
                .build();

        DesignOutcome design = design(LarkspurRidge.BRIEF.withLoads(kilowatts).withSite(site));

        assertThat(design.billOfMaterials()).isEqualTo(LARKSPUR.billOfMaterials());
        assertThat(Objects.requireNonNull(system(design).bank().capacity())
                        .requiredCapacity()
                        .ampereHours())
                .isCloseTo(
                        Objects.requireNonNull(system(LARKSPUR).bank().capacity())
                                .requiredCapacity()
                                .ampereHours(),
                        within(1e-9));
    }

    @Test
    void aDcLoadIsHeldAgainstTheBusVoltage() {
        // Lead-acid at 24 V, -17.55 °C: 12 · 2.45 V + 12 · (−5 mV/K) · (−17.55 − 25) K = 29.4 + 2.553 = 31.953 V
        Load tender = LoadBuilder.builder()
                .name("receiver")
                .supply(Supply.DC)
                .power(Power.watts(10))
                .hoursPerDay(24.0)
                .lowestSupply(Voltage.volts(21))
                .highestSupply(Voltage.volts(30))
                .build();
        DesignOutcome design = SystemDesigner.design(
                LarkspurRidge.BRIEF
                        .withLoads(List.of(tender))
                        .withWishes(Wishes.none()
                                .withNominalVoltage(Voltage.volts(24))
                                .withChemistries(List.of(Chemistry.VENTED_LEAD_ACID))),
                Catalog.sample());

        assertThat(design.checks())
                .filteredOn(check -> check.rule().code().equals("highestSupply"))
                .singleElement()
                .satisfies(check -> {
                    assertThat(check.passed()).isFalse();
                    assertThat(check.margin().orElseThrow().fraction()).isCloseTo((30 - 31.953) / 30, within(1e-6));
                    assertThat(check.message().toString()).contains("receiver", "DC converter");
                });
        // disconnect 12 · 1.9 V = 22.8 V, above 21 V
        assertThat(design.checks())
                .filteredOn(check -> check.rule().code().equals("lowestSupply"))
                .singleElement()
                .satisfies(check -> assertThat(check.passed()).isTrue());
    }
}
