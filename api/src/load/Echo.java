import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The least a server does that takes and gives the JSON of a calculator: it reads the request into a tree and writes the tree of
 * an answer that was made before. {@code java -cp jar Echo PORT answer.json}
 */
public final class Echo {
    public static void main(String[] arguments) throws Exception {
        ObjectMapper mapper = new ObjectMapper();
        JsonNode answer = mapper.readTree(Files.readAllBytes(Path.of(arguments[1])));
        Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.routes.post("/echo", context -> {
                        mapper.readTree(context.bodyAsBytes());
                        context.contentType("application/json").result(mapper.writeValueAsBytes(answer));
                    });
                })
                .start("127.0.0.1", Integer.parseInt(arguments[0]));
    }
}
