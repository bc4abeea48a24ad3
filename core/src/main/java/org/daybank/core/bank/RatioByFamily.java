package org.daybank.core.bank;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Validation;

/**
 * A ratio that planners set apart for the two families of batteries.
 *
 * @param leadAcid for vented, absorbed-glass-mat and gel batteries
 * @param lithium for lithium iron phosphate batteries
 */
public record RatioByFamily(Ratio leadAcid, Ratio lithium) {
    private static final Pattern PAIR = Pattern.compile("leadAcid\\s+([^,]+),\\s*lithium\\s+([^,]+)");

    /** Refuses an absent part. */
    public RatioByFamily {
        Validation.of(RatioByFamily.class, leadAcid, lithium).done();
    }

    /** The same ratio for both families. */
    public static RatioByFamily both(Ratio ratio) {
        return new RatioByFamily(ratio, ratio);
    }

    /**
     * Reads one ratio for both families, {@code "80 %"}, or one for each, {@code "leadAcid 0.5, lithium 0.8"}.
     *
     * @throws org.daybank.core.quantity.QuantityFormatException when the text is neither
     */
    public static RatioByFamily parse(CharSequence text) {
        Matcher pair = PAIR.matcher(text.toString().strip());
        return pair.matches()
                ? new RatioByFamily(Ratio.parse(pair.group(1)), Ratio.parse(pair.group(2)))
                : both(Ratio.parse(text));
    }

    /** The ratio for one family. */
    public Ratio of(BatteryFamily family) {
        return switch (family) {
            case LEAD_ACID -> leadAcid;
            case LITHIUM -> lithium;
        };
    }

    @Override
    public String toString() {
        return "leadAcid %s, lithium %s".formatted(leadAcid, lithium);
    }
}
