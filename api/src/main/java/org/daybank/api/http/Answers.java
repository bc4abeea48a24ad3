package org.daybank.api.http;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotAcceptableResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.daybank.api.wire.Json;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Sends answers; what was asked by GET or HEAD may be kept by the client and asked for again by its tag. */
public final class Answers {
    /** The media type of JSON answers. */
    public static final String JSON = "application/json; charset=utf-8";

    /** The media type of tables. */
    static final String CSV = "text/csv; charset=utf-8";

    /** The media type of plain text. */
    public static final String TEXT = "text/plain; charset=utf-8";

    private static final Logger LOG = LoggerFactory.getLogger(Answers.class);

    private Answers() {}

    /**
     * Sends JSON.
     *
     * @throws NotAcceptableResponse when the client takes no JSON
     */
    public static void json(Context context, JsonNode tree) {
        json(context, Json.write(tree));
    }

    /**
     * Sends bytes that are JSON.
     *
     * @throws NotAcceptableResponse when the client takes no JSON
     */
    public static void json(Context context, byte[] bytes) {
        Accept.choose(context, "application/json");
        send(context, JSON, bytes);
    }

    /** Sends bytes of any media type. */
    public static void send(Context context, String mediaType, byte[] bytes) {
        context.contentType(mediaType);
        if (!context.method().equals(HandlerType.POST)) {
            String tag = tag(bytes);
            context.header("ETag", tag);
            context.header("Cache-Control", "no-cache");
            if (isKept(String.valueOf(context.header("If-None-Match")), tag)) {
                context.status(HttpStatus.NOT_MODIFIED);
                return;
            }
        }
        deliver(context, bytes);
    }

    /** Hands the bytes to the connection in one piece, without the copies that a stream between the two would make. */
    private static void deliver(Context context, byte[] bytes) {
        try {
            context.res().setContentLength(bytes.length);
            context.res().getOutputStream().write(bytes);
        } catch (IOException hungUp) {
            LOG.debug("{} was not waited for", RequestId.of(context), hungUp);
        }
    }

    /** Whether the client keeps what has this tag, which is compared weakly (RFC 9110, 13.1.2). */
    private static boolean isKept(String header, String tag) {
        return List.of(header.split(",", -1)).stream()
                .map(kept -> kept.strip().replaceFirst("^W/", ""))
                .anyMatch(kept -> kept.equals(tag) || kept.equals("*"));
    }

    /** Says on which header of the request the answer depends, beside what was said before. */
    static void vary(Context context, String headers) {
        context.res().addHeader("Vary", headers);
    }

    /** Sends text. */
    public static void text(Context context, String text) {
        send(context, TEXT, text.getBytes(StandardCharsets.UTF_8));
    }

    /** A tag that changes with the answer, which changes with the version of the library. */
    private static String tag(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return '"' + HexFormat.of().formatHex(digest, 0, 12) + '"';
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
