package org.daybank.core.working;

/**
 * One step of a calculation, as one would write it on paper.
 *
 * @param name what is found: {@code autonomy charge}
 * @param formula the formula with symbols: {@code Q = E · d / U}
 * @param substituted the formula with the numbers put in: {@code 2.4 kWh · 3 d / 25.6 V}
 * @param result what comes out, with its unit: {@code 281.2 Ah}
 * @param source where the formula comes from: a standard's clause, a paper's equation, or what it follows from
 */
public record Step(String name, String formula, String substituted, String result, String source) {}
