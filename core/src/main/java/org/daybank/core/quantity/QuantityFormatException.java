package org.daybank.core.quantity;

/** Text that is not the quantity asked for; the message says what would be. */
public final class QuantityFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private static final int SHOWN = 40;

    /** The text that was refused, shortened when it is long. */
    private final String text;

    QuantityFormatException(CharSequence text, String message) {
        super(message);
        this.text = shown(text);
    }

    /** The text that was refused, shortened when it is long. */
    public String text() {
        return text;
    }

    /** A quotable form of the text: long text is cut. */
    static String shown(CharSequence text) {
        return text.length() <= SHOWN ? text.toString() : text.subSequence(0, SHOWN) + "…";
    }
}
