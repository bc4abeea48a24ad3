package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.junit.jupiter.api.Test;

class TableTest {

    @Test
    void theFirstLineNamesTheColumnsAndCommentsAreSkipped() {
        Table table = Table.parse("# source: invented\nname,power\n\n# more\nlamp , 7.5 W\r\nradio,13 W\n");

        assertThat(table.columns()).containsExactly("name", "power");
        assertThat(table.rows()).extracting(row -> row.text("name")).containsExactly("lamp", "radio");
        assertThat(table.rows())
                .extracting(row -> row.value(Power.class, "power"))
                .containsExactly(Power.watts(7.5), Power.watts(13));
        // lines are counted as an editor counts them, comments and blank lines included
        assertThat(table.rows()).extracting(Table.Row::line).containsExactly(5, 6);
    }

    @Test
    void quotedCellsHoldCommasAndQuotes() {
        Table table = Table.parse("name,note\n\"lamp, desk\",\"the \"\"good\"\" one\"\n\"\",\"#1\"\n");

        assertThat(table.rows().get(0).text("name")).isEqualTo("lamp, desk");
        assertThat(table.rows().get(0).text("note")).isEqualTo("the \"good\" one");
        assertThat(table.rows().get(1).optionalText("name")).isEmpty();
        assertThat(table.rows().get(1).text("note")).isEqualTo("#1");
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertThat(Table.parse("\uFEFFname\nlamp").columns()).containsExactly("name");
    }

    @Test
    void everyBadLineIsToldAtOnce() {
        assertThatThrownBy(() -> Table.parse("a,b,a\n1,2\n1,2,3\n1,2,3,4\n1,\"2,3\n"))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::message)
                                .containsExactly(
                                        "line 1 names the column a twice",
                                        "line 2 has 2 cells but the header names 3 columns",
                                        "line 4 has 4 cells but the header names 3 columns",
                                        "line 5 opens a quote that is not closed on that line",
                                        "line 5 has 2 cells but the header names 3 columns"));
    }

    @Test
    void aTableNeedsAHeader() {
        assertThatThrownBy(() -> Table.parse("# nothing\n\n")).hasMessage("the table has no header line");
        assertThat(Table.parse("a,b").rows()).isEmpty();
    }

    @Test
    void cellsAreReadWithLineAndColumnInTheMessage() {
        Table.Row row = Table.parse("name,power,count\nlamp,7.5,\n").rows().get(0);

        assertThatThrownBy(() -> row.value(Power.class, "power"))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .singleElement()
                                .satisfies(problem -> {
                                    assertThat(problem.path()).isEqualTo("/power");
                                    assertThat(problem.code()).isEqualTo(ProblemCode.UNREADABLE);
                                    assertThat(problem.message())
                                            .startsWith("line 2, power: '7.5' is not a power: the unit is missing");
                                }));
        assertThatThrownBy(() -> row.value(Integer.class, "count")).hasMessage("line 2: count is required.");
        assertThatThrownBy(() -> row.text("colour")).hasMessage("line 2: colour is required.");
        assertThat(row.optionalValue(Integer.class, "count")).isEmpty();
        assertThat(row.optionalValue(Double.class, "power")).contains(7.5);
    }

    @Test
    void aResourceLiesBesideItsClass() {
        assertThatThrownBy(() -> Table.resource(TableTest.class, "nowhere.csv"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("nowhere.csv");
        assertThat(Table.resource(TableTest.class, "lamps.csv").rows()).hasSize(2);
    }

    @Test
    void messagesHaveTheSameDigitsInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThatThrownBy(() -> Table.parse("a,b\n1\n"))
                    .hasMessage("line 2 has 1 cells but the header names 2 columns");
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Ten thousand bad lines: a hundred are listed, 9,900 are counted. */
    @Test
    void ofManyBadLinesTheFirstHundredAreListed() {
        assertThatThrownBy(() -> Table.parse("a,b\n" + "1\n".repeat(10_000)))
                .isInstanceOfSatisfying(InvalidInput.class, invalid -> {
                    assertThat(invalid.problems()).hasSize(101);
                    assertThat(invalid.problems().get(99).message())
                            .isEqualTo("line 101 has 1 cells but the header names 2 columns");
                    assertThat(invalid.problems().get(100))
                            .isEqualTo(new Problem("", ProblemCode.MORE, "9900 more problems are not listed."));
                    assertThat(invalid.getMessage()).hasSizeLessThan(10_000);
                });
    }

    @Test
    void ofManyEqualColumnsTheFirstHundredAreListed() {
        assertThatThrownBy(() -> Table.parse("a" + ",a".repeat(3999)))
                .isInstanceOfSatisfying(InvalidInput.class, invalid -> {
                    assertThat(invalid.problems()).hasSize(101);
                    // the first is no repetition
                    assertThat(invalid.problems().get(100).message()).isEqualTo("3899 more problems are not listed.");
                });
    }

    @Test
    void aTableHasAtMostTwentyThousandRows() {
        assertThat(Table.parse("a\n" + "1\n".repeat(20_000)).rows()).hasSize(20_000);
        assertThatThrownBy(() -> Table.parse("a\n" + "1\n".repeat(20_001)))
                .hasMessage("line 20002: a table must have at most 20000 rows");
    }

    @Test
    void aLongNameOfAColumnIsShortened() {
        String name = "n".repeat(50_000);
        assertThatThrownBy(() -> Table.parse(name + "," + name))
                .hasMessage("line 1 names the column " + "n".repeat(40) + "… twice");
    }
}
