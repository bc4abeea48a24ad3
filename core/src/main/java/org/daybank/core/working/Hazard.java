package org.daybank.core.working;

/**
 * What can hurt someone or something in a design, present only when its cause is.
 *
 * @param code kind of the hazard
 * @param severity by ANSI Z535.6
 * @param subject the part or circuit that it concerns
 * @param text what can happen, and why in this design
 * @param action what to do about it
 */
public record Hazard(HazardCode code, Severity severity, String subject, Message text, Message action) {
    /** The sentence to which every hazard defers; a document states it once. */
    public static final String LOCAL_CODE =
            "Local codes decide, and a licensed electrician must check and carry out the work.";

    /**
     * Returns a hazard with the sentences and the severity of its code.
     *
     * @param subject the part or circuit that it concerns
     * @param named values for the placeholders of both sentences
     */
    public static Hazard of(HazardCode code, String subject, Message.Value... named) {
        String key = "hazard." + code.code();
        return new Hazard(
                code, code.severity(), subject, Message.of(key + ".text", named), Message.of(key + ".action", named));
    }

    /** Returns the same hazard with the sentences of a special case, whose keys end with {@code .{variant}}. */
    public Hazard variant(String variant) {
        return new Hazard(code, severity, subject, text.variant(variant), action.variant(variant));
    }
}
