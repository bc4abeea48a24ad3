package org.daybank.api.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.MethodNotAllowedResponse;
import io.javalin.http.ServiceUnavailableResponse;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.daybank.api.wire.Json;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.Scalars;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns everything that goes wrong into problem details (RFC 9457); what went wrong inside stays in the log. */
public final class Errors {
    /** The media type of every error. */
    public static final String PROBLEM = "application/problem+json; charset=utf-8";

    private static final Logger LOG = LoggerFactory.getLogger(Errors.class);
    private static final int IN_DETAIL = 5;
    private static final String UNEXPECTED = "Something went wrong here; the request id finds it in the log";

    /** When to ask again what could not be answered for want of room. */
    static final String RETRY_SECONDS = "5";

    /** The response of the contract that describes each kind of error. */
    private static final Map<Integer, String> RESPONSES = Map.of(
            400, "InvalidInput",
            401, "Unauthorized",
            404, "NotFound",
            405, "MethodNotAllowed",
            406, "NotAcceptable",
            413, "ContentTooLarge",
            415, "UnsupportedMediaType",
            500, "Unexpected",
            503, "Unavailable",
            504, "TooLong");

    private Errors() {}

    /** Answers every exception. */
    public static void handleIn(RoutesConfig routes) {
        routes.exception(InvalidInput.class, (refused, context) -> invalid(context, refused.problems()));
        routes.exception(HttpResponseException.class, Errors::refused);
        routes.exception(Exception.class, (unexpected, context) -> unexpected(context, unexpected));
    }

    /**
     * Answers an error of the virtual machine, such as an exhausted memory or stack, which no handler of exceptions sees.
     *
     * @param response what may have been written into it is thrown away, unless it was sent already
     */
    public static void answer(HttpServletResponse response, Error error) {
        LOG.error("{} failed", response.getHeader(RequestId.HEADER), error);
        if (response.isCommitted()) {
            return;
        }
        response.resetBuffer();
        boolean full = error instanceof OutOfMemoryError;
        int status = full ? HttpStatus.SERVICE_UNAVAILABLE.getCode() : HttpStatus.INTERNAL_SERVER_ERROR.getCode();
        byte[] document = document(status, full ? "The request takes more memory than there is now" : UNEXPECTED);
        if (full) {
            response.setHeader("Retry-After", RETRY_SECONDS);
        }
        response.setStatus(status);
        response.setContentType(PROBLEM);
        response.setContentLength(document.length);
        try {
            response.getOutputStream().write(document);
        } catch (IOException gone) {
            LOG.debug("The client is gone", gone);
        }
    }

    private static void refused(HttpResponseException refused, Context context) {
        String detail = String.valueOf(refused.getMessage());
        if (refused instanceof MethodNotAllowedResponse) {
            String allowed = String.join(", ", refused.getDetails().values());
            context.header("Allow", allowed);
            detail = "This path answers " + allowed;
        }
        if (refused instanceof ServiceUnavailableResponse) {
            context.header("Retry-After", RETRY_SECONDS);
        }
        send(context, refused.getStatus(), detail, List.of());
    }

    /** Answers that something went wrong here, and logs what. */
    public static void unexpected(Context context, Throwable cause) {
        LOG.error("{} failed", RequestId.of(context), cause);
        send(context, HttpStatus.INTERNAL_SERVER_ERROR.getCode(), UNEXPECTED, List.of());
    }

    /** Answers that the input is not right, with everything that is wrong with it. */
    private static void invalid(Context context, List<Problem> problems) {
        send(context, HttpStatus.BAD_REQUEST.getCode(), sentence(problems), problems);
    }

    /** The first few problems in one line. */
    static String sentence(List<Problem> problems) {
        String first = problems.stream().limit(IN_DETAIL).map(Problem::message).collect(Collectors.joining(" "));
        return problems.size() > IN_DETAIL ? first + " Further problems are listed under errors." : first;
    }

    private static void send(Context context, int status, String detail, List<Problem> problems) {
        ObjectNode document = describe(status, detail);
        if (!problems.isEmpty()) {
            ArrayNode errors = document.putArray("errors");
            problems.forEach(problem -> errors.addObject()
                    .put(isPointer(problem.path()) ? "pointer" : "parameter", problem.path())
                    .put("code", Scalars.name(problem.code()))
                    .put("detail", problem.message()));
        }
        context.status(status).contentType(PROBLEM).result(Json.write(document));
    }

    /** A problem document without particulars. */
    static byte[] document(int status, String detail) {
        return Json.write(describe(status, detail));
    }

    private static ObjectNode describe(int status, String detail) {
        String response = RESPONSES.getOrDefault(status, status < 500 ? "Unreadable" : "Unexpected");
        return JsonNodeFactory.instance
                .objectNode()
                .put("type", "/openapi.yaml#/components/responses/" + response)
                .put("title", HttpStatus.forStatus(status).getMessage())
                .put("status", status)
                .put("detail", detail);
    }

    /** A path into a body begins with a slash or is empty; a query parameter is called by its name. */
    private static boolean isPointer(String path) {
        return path.isEmpty() || path.startsWith("/");
    }
}
