package org.daybank.core.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.working.Table;
import org.junit.jupiter.api.Test;

class SheetsTest {
    private static final String HEAD =
            "model,kind,busVoltages,maximumInputVoltage,outputCurrent,efficiency,chemistries,price\n";

    @Test
    void readsCellsWithUnitsListsAndWhatIsLeftOut() {
        List<ChargeController> read = Sheets.read(
                ChargeController.class,
                Table.parse(HEAD + "A,stepDownMppt,12 V; 24 V,100 V,20 A,,agm; gel,99.50 EUR\n"
                        + "B,pwm,12 V,50 V,10000 mA,1,agm,12 EUR\n"));

        ChargeController first = read.get(0);
        assertThat(first.kind()).isEqualTo(ControllerKind.STEP_DOWN_MPPT);
        assertThat(first.busVoltages()).containsExactly(Voltage.volts(12), Voltage.volts(24));
        assertThat(first.chemistries()).containsExactly(Chemistry.AGM, Chemistry.GEL);
        assertThat(first.price()).isEqualTo(Money.of("99.50", "EUR"));
        // left out: the stated default
        assertThat(first.efficiency()).isEqualTo(Ratio.of(0.96));
        assertThat(first.resolved().maximumInputCurrent()).isEqualTo(Current.amperes(20));
        assertThat(read.get(1).outputCurrent()).isEqualTo(Current.amperes(10));
    }

    @Test
    void tellsEverythingThatIsWrongWithItsLine() {
        InvalidInput refused = refused("# our own sheet\n"
                + HEAD.replace("price", "price,colour")
                + "A,pwm,12 V,fifty,10 A,1,agm,12 EUR,red\n"
                + "B,pwm,12 V,50 V,10 A,1,agm,12 EUR,blue\n"
                + "C,pwm,12 V; 7 V,50 V,-3 A,1,agm,12 EUR,green\n"
                + "D,pwm,12 V,50 V,10 A,1,agm; tin,12 EUR,green\n");

        // line 1 is the remark, line 2 the head
        assertThat(refused.problems())
                .anySatisfy(problem -> {
                    assertThat(problem.code()).isEqualTo(ProblemCode.UNKNOWN_NAME);
                    assertThat(problem.message()).startsWith("colour").contains("outputCurrent");
                })
                .anySatisfy(problem ->
                        assertThat(problem.message()).startsWith("line 3").contains("fifty"))
                .anySatisfy(problem ->
                        assertThat(problem.message()).startsWith("line 5").contains("busVoltages"))
                .anySatisfy(problem ->
                        assertThat(problem.message()).startsWith("line 5").contains("outputCurrent"))
                .anySatisfy(problem ->
                        assertThat(problem.message()).startsWith("line 6").contains("tin"))
                .noneSatisfy(problem -> assertThat(problem.message()).startsWith("line 4"));
    }

    @Test
    void tellsEveryBadCellOfOneRow() {
        InvalidInput refused = refused(HEAD + "A,pwm,12 V,fifty,ten,1,agm,12 EUR\n");

        assertThat(refused.problems())
                .extracting(Problem::message)
                .anySatisfy(message -> assertThat(message).contains("fifty"))
                .anySatisfy(message -> assertThat(message).contains("ten"));
    }

    @Test
    void namesWhatIsMissing() {
        InvalidInput refused = refused("model,kind\nA,pwm\n");

        assertThat(refused.problems())
                .extracting(Problem::path)
                .contains("/busVoltages", "/maximumInputVoltage", "/outputCurrent", "/chemistries", "/price");
        assertThat(refused.problems())
                .allSatisfy(problem -> assertThat(problem.message()).startsWith("line 2"));
    }

    private static InvalidInput refused(String text) {
        return catchThrowableOfType(InvalidInput.class, () -> Sheets.read(ChargeController.class, Table.parse(text)));
    }

    /** Each line lacks all of the six cells that a controller must have: 6 · 5,000 problems, of which a hundred are listed. */
    @Test
    void ofManyBadLinesTheFirstHundredProblemsAreListed() {
        InvalidInput one = refused("model,colour\nA,red\n");
        InvalidInput many = refused("model\n" + "A\n".repeat(5000));
        int missing = one.problems().size() - 1;
        assertThat(many.problems()).hasSize(101);
        assertThat(many.problems().get(100).message())
                .isEqualTo("%s more problems are not listed.".formatted(5000 * missing - 100));
    }
}
