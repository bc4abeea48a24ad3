package org.daybank.core.wiring;

import org.daybank.core.quantity.Ratio;

/** Which circuit of a system it is. */
public enum CircuitKind {
    /** One string of modules, up to where strings join. */
    STRING(Role.STRING, DeviceKind.PHOTOVOLTAIC_FUSE, Current.DIRECT),
    /** Strings that joined, up to where such groups join. */
    COMBINER(Role.ARRAY, DeviceKind.PHOTOVOLTAIC_FUSE, Current.DIRECT),
    /** The whole array, or what of it one controller or inverter takes. */
    ARRAY_TO_CONTROLLER(Role.ARRAY, DeviceKind.PHOTOVOLTAIC_FUSE, Current.DIRECT),
    /** A charge controller's output. */
    CONTROLLER_TO_BANK(Role.SUPPLY, DeviceKind.FUSE, Current.DIRECT),
    /** What an inverter draws from the bank. */
    BANK_TO_INVERTER(Role.SUPPLY, DeviceKind.FUSE, Current.DIRECT),
    /** An inverter's output. */
    AC_OUTPUT(Role.SUPPLY, DeviceKind.BREAKER, Current.ALTERNATING),
    /** Loads on the bank. */
    DC_LOADS(Role.SUPPLY, DeviceKind.FUSE, Current.DIRECT),
    /** An engine generator's output. */
    GENERATOR(Role.SUPPLY, DeviceKind.BREAKER, Current.ALTERNATING),
    /** The connection to a grid. */
    GRID(Role.SUPPLY, DeviceKind.BREAKER, Current.ALTERNATING);

    private final Role role;
    private final DeviceKind device;
    private final Current current;

    CircuitKind(Role role, DeviceKind device, Current current) {
        this.role = role;
        this.device = device;
        this.current = current;
    }

    /** Which rules of {@code circuit-rules.csv} hold for it. */
    enum Role {
        STRING,
        ARRAY,
        SUPPLY
    }

    private enum Current {
        DIRECT,
        ALTERNATING
    }

    Role role() {
        return role;
    }

    /** What protects it. */
    public DeviceKind device() {
        return device;
    }

    /** Whether direct current flows in it. */
    public boolean directCurrent() {
        return current == Current.DIRECT;
    }

    /** Whether modules feed it. */
    public boolean fedByModules() {
        return role != Role.SUPPLY;
    }

    /** Whether the bank feeds a fault in it. */
    public boolean fedByBank() {
        return role == Role.SUPPLY && directCurrent();
    }

    /** The largest drop that a policy allows it. */
    Ratio dropLimit(WiringPolicy policy) {
        return switch (this) {
            case STRING, COMBINER, ARRAY_TO_CONTROLLER -> policy.arrayDrop();
            case CONTROLLER_TO_BANK, BANK_TO_INVERTER -> policy.bankDrop();
            case AC_OUTPUT, DC_LOADS, GENERATOR, GRID -> policy.loadDrop();
        };
    }
}
