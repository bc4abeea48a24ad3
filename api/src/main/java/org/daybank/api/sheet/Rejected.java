package org.daybank.api.sheet;

import java.util.List;
import java.util.stream.Collectors;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.EvaluatedProducts;
import org.daybank.core.design.ModuleSelection;
import org.daybank.core.design.ProductSelections;
import org.daybank.core.design.RejectedVoltage;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.inverter.InverterSelection;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;

/** Every product that was not chosen: those that fit as well, and those that do not, with each rule they break. */
final class Rejected {
    private final Html html = new Html();

    private Rejected() {}

    static Html of(DesignOutcome design) {
        Rejected section = new Rejected();
        design.<Rejected>fold(
                standAlone -> section.onBank(standAlone.rejected()),
                backup -> section.onBank(backup.rejected()),
                grid -> section.modules(grid.rejected().modules())
                        .grid(grid.rejected().inverters()),
                none -> section.evaluated(none.rejected()));
        return section.html;
    }

    private Rejected onBank(ProductSelections products) {
        products.rejectedVoltages().forEach(this::voltage);
        modules(products.modules()).batteries(products.batteries()).controllers(products.chargeControllers());
        products.inverters().ifPresent(this::inverters);
        return this;
    }

    private Rejected evaluated(EvaluatedProducts products) {
        products.modules().ifPresent(this::modules);
        products.batteries().ifPresent(this::batteries);
        products.chargeControllers().ifPresent(this::controllers);
        products.inverters().ifPresent(this::inverters);
        products.gridInverters().ifPresent(this::grid);
        return this;
    }

    private Rejected modules(ModuleSelection modules) {
        return kind("Modules", modules.ranked(), modules.rejected());
    }

    private Rejected batteries(BankSelection batteries) {
        return kind("Batteries", batteries.ranked(), batteries.rejected());
    }

    private Rejected controllers(ChargerSelection controllers) {
        return kind("Charge controllers", controllers.ranked(), controllers.rejected());
    }

    private Rejected inverters(InverterSelection inverters) {
        return kind("Inverters", inverters.ranked(), inverters.rejected());
    }

    private Rejected grid(GridInverterSelection inverters) {
        return kind(
                        "String inverters",
                        inverters.stringInverters().ranked(),
                        inverters.stringInverters().rejected())
                .kind(
                        "Microinverters",
                        inverters.microinverters().ranked(),
                        inverters.microinverters().rejected());
    }

    private void voltage(RejectedVoltage rejected) {
        html.element("h3", "A bus of " + Words.of(rejected.voltage())).list(sentences(rejected.failedChecks()));
    }

    private Rejected kind(String kind, List<? extends Assessment> ranked, List<Rejection> rejected) {
        html.element("h3", kind);
        html.element(
                "p",
                ranked.isEmpty()
                        ? "None fits."
                        : "These fit, the first ranked first: "
                                + ranked.stream().map(Assessment::product).collect(Collectors.joining(", ")) + ".");
        if (rejected.isEmpty()) {
            return this;
        }
        html.open("dl");
        for (Rejection rejection : rejected) {
            html.element("dt", rejection.product())
                    .open("dd")
                    .list(sentences(rejection.failedChecks()))
                    .close();
        }
        html.close();
        return this;
    }

    static List<String> sentences(List<Check> checks) {
        return checks.stream().map(check -> check.message().toString()).toList();
    }
}
