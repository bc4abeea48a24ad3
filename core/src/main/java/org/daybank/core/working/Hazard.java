package org.daybank.core.working;

/**
 * What can hurt someone or something in a design, present only when its cause is.
 *
 * @param code stable name: {@code bankShortCircuit}
 * @param severity how much it weighs
 * @param subject the part or circuit it is about
 * @param text what can happen and why it does here
 * @param action what to do about it
 */
public record Hazard(String code, Severity severity, String subject, String text, String action) {
    /** What every hazard defers to. */
    public static final String LOCAL_CODE =
            "Local codes decide, and a licensed electrician must check and carry out the work.";
}
