package org.daybank.api.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.MethodNotAllowedResponse;
import io.javalin.http.ServiceUnavailableResponse;
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
     * Lets a handler answer errors of the virtual machine, such as an exhausted memory or stack, which handlers of exceptions
     * do not see.
     */
    public static Handler guarded(Handler handler) {
        return context -> {
            try {
                handler.handle(context);
            } catch (Error error) {
                answer(context, error);
            }
        };
    }

    private static void answer(Context context, Error error) {
        if (context.res().isCommitted()) {
            LOG.error("{} failed on the way", RequestId.of(context), error);
        } else if (error instanceof OutOfMemoryError) {
            LOG.error("{} failed", RequestId.of(context), error);
            context.res().resetBuffer();
            context.header("Retry-After", RETRY_SECONDS);
            send(
                    context,
                    HttpStatus.SERVICE_UNAVAILABLE.getCode(),
                    "The request takes more memory than there is now",
                    List.of());
        } else {
            context.res().resetBuffer();
            unexpected(context, error);
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
        send(
                context,
                HttpStatus.INTERNAL_SERVER_ERROR.getCode(),
                "Something went wrong here; the request id finds it in the log",
                List.of());
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
