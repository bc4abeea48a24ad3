/**
 * What is the same for every endpoint: how a request is read, an answer is written and an error is told.
 *
 * <p>A {@link org.daybank.api.http.Calculation} ties a request record to a call of the library; its routes read the request
 * through {@code wire}, call, and write the envelope. {@link org.daybank.api.http.Errors} turns everything that goes wrong
 * into problem details (RFC 9457).
 */
@NullMarked
package org.daybank.api.http;

import org.jspecify.annotations.NullMarked;
