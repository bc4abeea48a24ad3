package org.daybank.core.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Objects;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.junit.jupiter.api.Test;

/** Inputs about the grid: what was left out follows the other components, and no absurd value is accepted. */
class GridInputsTest {
    private static final Tariff TARIFF =
            TariffBuilder.builder().importPrice(price("0.30", "EUR")).build();

    private static final Busbar BUSBAR = new Busbar(Current.amperes(125), Current.amperes(100), Current.amperes(32));
    private static final Coupling COUPLING =
            new Coupling(Power.kilowatts(5), Power.kilowatts(6), Power.kilowatts(4), Power.watts(200));
    private static final BillPolicy BILL = BillPolicy.standard();

    private static EnergyPrice price(String amount, String currency) {
        return new EnergyPrice(Money.of(amount, currency), null);
    }

    private static void refused(ThrowingCallable construction, String path, ProblemCode code) {
        assertThatThrownBy(construction)
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::path, Problem::code)
                                .containsExactly(tuple(path, code)));
    }

    private static void outOfRange(ThrowingCallable construction, String path) {
        refused(construction, path, ProblemCode.OUT_OF_RANGE);
    }

    @Test
    void chargesThatWereLeftOutFollowTheCurrency() {
        Tariff dollars = TARIFF.withImportPrice(price("0.20", "USD"));

        assertThat(dollars.unavoidablePrice()).isNull();
        assertThat(dollars.monthlyCharge()).isNull();
        assertThat(TARIFF.resolved().monthlyCharge()).isEqualTo(Money.of("0", "EUR"));
        assertThat(dollars.resolved().monthlyCharge()).isEqualTo(Money.of("0", "USD"));
        assertThat(dollars.resolved().unavoidablePrice()).isEqualTo(price("0", "USD"));
        assertThat(dollars)
                .isEqualTo(TariffBuilder.builder()
                        .importPrice(price("0.20", "USD"))
                        .build());
        // a charge that was given stays, and then contradicts the new currency
        refused(
                () -> TARIFF.withMonthlyCharge(Money.of("5", "EUR")).withImportPrice(price("0.20", "USD")),
                "/monthlyCharge",
                ProblemCode.CONFLICT);
    }

    @Test
    void noTariffIsAbsurd() {
        outOfRange(() -> price("-0.01", "EUR"), "/price");
        outOfRange(() -> new EnergyPrice(Money.of("1", "EUR"), Energy.ZERO), "/per");
        outOfRange(() -> TARIFF.withMonthlyCharge(Money.of("-5", "EUR")), "/monthlyCharge");
        outOfRange(() -> TARIFF.withExportLimit(Power.watts(-1)), "/exportLimit");
        outOfRange(() -> TARIFF.withExportLimit(Power.watts(1e300)), "/exportLimit");
        refused(() -> TARIFF.withUnavoidablePrice(price("0.31", "EUR")), "/unavoidablePrice", ProblemCode.INCONSISTENT);
        refused(() -> TARIFF.withImportPrice(null), "/importPrice", ProblemCode.MISSING);
        assertThat(Objects.requireNonNull(TARIFF.withUnavoidablePrice(price("0.30", "EUR"))
                                .unavoidablePrice())
                        .price())
                .isEqualTo(Money.of("0.30", "EUR"));
    }

    @Test
    void aPolicyTakesTheDefaultOfWhatIsLeftOut() {
        assertThat(new BusbarPolicy(null, null)).isEqualTo(BILL.busbar());
    }

    @Test
    void noPanelCouplingOrOutageIsAbsurd() {
        outOfRange(() -> new Busbar(BUSBAR.rating(), BUSBAR.main(), Current.ZERO), "/inverterCurrent");
        outOfRange(
                () -> new Coupling(
                        COUPLING.gridInverterPower(), COUPLING.multimodePower(), Power.watts(-1), COUPLING.leastLoad()),
                "/bankAccepts");
        outOfRange(() -> new Busbar(Current.amperes(1e9), Current.amperes(63), Current.amperes(16)), "/rating");
        outOfRange(() -> new Busbar(Current.amperes(100), Current.amperes(-5), Current.amperes(16)), "/main");
        outOfRange(
                () -> new Coupling(Power.watts(1e300), Power.kilowatts(5), Power.kilowatts(4), null),
                "/gridInverterPower");
        outOfRange(() -> new BackupNeed(Energy.kilowattHours(1e12), null, null, null, null), "/usable");
        outOfRange(() -> new BackupNeed(Energy.kilowattHours(5), null, null, null, TimeSpan.hours(0)), "/longest");
    }
}
