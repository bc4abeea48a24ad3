package org.daybank.core.sweep.kernel;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Text in UTF-8 that grows at its end; for one thread. */
public final class TextBuffer {
    /** Longest text of a number, with room to spare. */
    private static final int LONGEST_NUMBER = 32;

    private static final double EXACT = 1L << 53;

    private final ShortestDecimal decimal = new ShortestDecimal();
    private byte[] bytes = new byte[1 << 10];
    private int length;

    /** How many bytes there are. */
    public int length() {
        return length;
    }

    /** Writes all of it. */
    public void writeTo(OutputStream out) throws IOException {
        out.write(bytes, 0, length);
    }

    /** One character below 128. */
    public void add(char ascii) {
        room(1);
        bytes[length++] = (byte) ascii;
    }

    /** Text. */
    public void add(String text) {
        add(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Text that is in UTF-8 already. */
    public void add(byte[] text) {
        room(text.length);
        System.arraycopy(text, 0, bytes, length, text.length);
        length += text.length;
    }

    /**
     * A finite number in the fewest digits that read back to it, without an exponent where a person would write none, and
     * without a decimal point when it is whole.
     */
    public void add(double number) {
        room(LONGEST_NUMBER);
        if (number < 0) {
            bytes[length++] = '-';
        }
        double size = Math.abs(number);
        if (size < EXACT && size == (long) size) {
            whole((long) size);
            return;
        }
        decimal.find(size);
        long digits = decimal.digits();
        int count = digitsOf(digits);
        int point = count + decimal.exponent();
        if (point > 21 || point <= -7) {
            scientific(digits, count, point - 1);
        } else if (decimal.exponent() >= 0) {
            whole(digits);
            fill(decimal.exponent());
        } else if (point > 0) {
            // the digits move one to the right behind the point
            put(digits, length + count);
            System.arraycopy(bytes, length + point, bytes, length + point + 1, count - point);
            bytes[length + point] = '.';
            length += count + 1;
        } else {
            bytes[length++] = '0';
            bytes[length++] = '.';
            fill(-point);
            whole(digits);
        }
    }

    private void scientific(long digits, int count, int exponent) {
        put(digits, length + 1 + count);
        bytes[length] = bytes[length + 1];
        bytes[length + 1] = '.';
        length += count == 1 ? 1 : count + 1;
        bytes[length++] = 'e';
        if (exponent < 0) {
            bytes[length++] = '-';
        }
        whole(Math.abs(exponent));
    }

    private void whole(long number) {
        int end = length + digitsOf(number);
        put(number, end);
        length = end;
    }

    /** Writes digits up to a place. */
    private void put(long number, int end) {
        int at = end;
        long left = number;
        do {
            long tenth = left / 10;
            bytes[--at] = (byte) ('0' + (left - 10 * tenth));
            left = tenth;
        } while (left != 0);
    }

    private void fill(int zeros) {
        Arrays.fill(bytes, length, length + zeros, (byte) '0');
        length += zeros;
    }

    private static int digitsOf(long number) {
        int count = 1;
        for (long bound = 10; count < 19 && number >= bound; bound *= 10) {
            count++;
        }
        return count;
    }

    private void room(int more) {
        if (bytes.length - length < more) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + more));
        }
    }

    @Override
    public String toString() {
        return new String(bytes, 0, length, StandardCharsets.UTF_8);
    }
}
