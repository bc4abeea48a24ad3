import io.javalin.Javalin;

/** The least that starts: one word on one path. {@code java -cp jar Hello PORT} */
public final class Hello {
    public static void main(String[] arguments) {
        Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.routes.get("/health", context -> context.result("ok"));
                })
                .start("127.0.0.1", Integer.parseInt(arguments[0]));
    }
}
