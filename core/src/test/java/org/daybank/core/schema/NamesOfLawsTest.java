package org.daybank.core.schema;

import org.junit.jupiter.api.Test;

class NamesOfLawsTest {
    @Test
    void print() {
        int i = 1;
        for (Class<? extends Record> type : InputRecords.TYPES) {
            for (RecordSchema.Component component : RecordSchema.of(type).components()) {
                System.out.println("LAW " + i++ + " " + type.getName() + "." + component.name());
            }
        }
    }
}
