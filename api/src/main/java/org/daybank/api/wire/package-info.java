/**
 * Records of the library as they cross the wire.
 *
 * <p>A JSON tree comes in through {@link org.daybank.api.wire.Json}, or a flat form (query parameters) through
 * {@link org.daybank.api.wire.FlatForm}; {@link org.daybank.api.wire.Binder} builds a record from it by its components and
 * tells everything that is wrong at once; {@link org.daybank.api.wire.RecordWriter} writes records back. All three know a
 * record by its {@link org.daybank.api.wire.Shape} and a value by its {@link org.daybank.api.wire.Form}; nothing here knows
 * any calculator.
 */
@NullMarked
package org.daybank.api.wire;

import org.jspecify.annotations.NullMarked;
