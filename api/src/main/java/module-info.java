/** The calculators of Daybank over HTTP. */
module org.daybank.api {
    requires org.daybank.core;
    requires com.fasterxml.jackson.databind;
    requires com.fasterxml.jackson.dataformat.yaml;
    requires io.javalin;
    requires micrometer.core;
    requires micrometer.registry.prometheus;
    requires org.jspecify;
    requires org.eclipse.jetty.ee10.servlet;
    requires org.eclipse.jetty.server;
    requires org.slf4j;

    // a sweep reads requests and answers by their components
    opens org.daybank.api.request to
            org.daybank.core;
}
