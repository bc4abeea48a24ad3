package org.daybank.api.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The style of the sheet, which stands in the page, and its digest, by which a content security policy lets it through. */
public final class SheetStyle {
    private static final String CSS = read();

    private SheetStyle() {}

    /** What allows this style and nothing else: {@code 'sha256-…'} (Content Security Policy, level 2). */
    public static String source() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(CSS.getBytes(StandardCharsets.UTF_8));
            return "'sha256-%s'".formatted(Base64.getEncoder().encodeToString(digest));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    static Html element() {
        return new Html().style(CSS);
    }

    private static String read() {
        try (InputStream in = SheetStyle.class.getResourceAsStream("sheet.css")) {
            if (in == null) {
                throw new IllegalStateException("The style of the sheet is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
