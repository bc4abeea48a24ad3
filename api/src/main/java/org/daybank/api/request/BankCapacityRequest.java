package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.bank.BankDemand;
import org.daybank.core.bank.BankPolicy;

/**
 * Which capacity does a demand call for?
 *
 * @param demand what is asked of the bank
 * @param policy what is assumed
 */
public record BankCapacityRequest(@Inline BankDemand demand, BankPolicy policy) {}
