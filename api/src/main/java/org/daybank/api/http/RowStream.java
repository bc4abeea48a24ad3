package org.daybank.api.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * An answer that is written while it is made. Once it has begun nothing but its end can be told: what fails on the way breaks
 * the connection off, so that no client takes a part for the whole.
 */
final class RowStream {
    private static final Logger LOG = LoggerFactory.getLogger(RowStream.class);
    private static final int BUFFER = 1 << 16;

    private RowStream() {}

    /** Writes an answer. */
    interface Writer {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Sends what a writer writes, compressed where the client asks for it. */
    static void send(Context context, Writer writer) {
        try {
            OutputStream plain = context.res().getOutputStream();
            if (!wantsGzip(context)) {
                writer.writeTo(plain);
                return;
            }
            context.header("Content-Encoding", "gzip");
            // ended only when all went well: an end would make a whole of the part
            GZIPOutputStream compressed = new GZIPOutputStream(plain, BUFFER, true);
            writer.writeTo(compressed);
            compressed.finish();
        } catch (IOException gone) {
            LOG.debug("{} broke off: the client is gone", RequestId.of(context), gone);
            breakOff(context);
        } catch (RuntimeException | Error failed) {
            LOG.error("{} failed on the way", RequestId.of(context), failed);
            breakOff(context);
        }
    }

    private static void breakOff(Context context) {
        ServletContextRequest.getServletContextRequest(context.req())
                .getConnectionMetaData()
                .getConnection()
                .getEndPoint()
                .close();
    }

    private static boolean wantsGzip(Context context) {
        String accepted = context.header("Accept-Encoding");
        if (accepted == null) {
            return false;
        }
        return List.of(accepted.toLowerCase(Locale.ROOT).replace(" ", "").split(",", -1)).stream()
                .map(coding -> List.of(coding.split(";", -1)))
                .anyMatch(coding -> coding.get(0).equals("gzip") && !coding.contains("q=0"));
    }
}
