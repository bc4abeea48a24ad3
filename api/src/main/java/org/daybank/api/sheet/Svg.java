package org.daybank.api.sheet;

import java.util.Locale;

/** A drawing of a fixed size, in black and grey alone, with a title and a description for who cannot see it. */
final class Svg {
    static final String INK = "#111";
    private static final String FAINT = "#bbb";

    /** What a small screen shows without scrolling. */
    private static final int NARROW = 320;

    private final Html html;

    /**
     * An empty drawing.
     *
     * @param id of this drawing on the page
     * @param title what it shows
     * @param told the same in words
     */
    Svg(String id, int width, int height, String title, String told) {
        html = new Html()
                .open(
                        "svg",
                        "viewBox",
                        "0 0 %s %s".formatted(width, height),
                        "width",
                        width,
                        "height",
                        height,
                        "class",
                        width > NARROW ? "broad" : "small",
                        "role",
                        "img",
                        "aria-labelledby",
                        id + "-title " + id + "-told")
                .element("title", title, "id", id + "-title")
                .element("desc", told, "id", id + "-told");
    }

    Svg line(double fromX, double fromY, double toX, double toY) {
        return line(fromX, fromY, toX, toY, INK);
    }

    Svg faintLine(double fromX, double fromY, double toX, double toY) {
        return line(fromX, fromY, toX, toY, FAINT);
    }

    private Svg line(double fromX, double fromY, double toX, double toY, String stroke) {
        html.empty(
                "line",
                "x1",
                point(fromX),
                "y1",
                point(fromY),
                "x2",
                point(toX),
                "y2",
                point(toY),
                "stroke",
                stroke,
                "stroke-width",
                stroke.equals(INK) ? "1.5" : "1");
        return this;
    }

    Svg rectangle(double x, double y, double width, double height, String fill) {
        html.empty(
                "rect",
                "x",
                point(x),
                "y",
                point(y),
                "width",
                point(width),
                "height",
                point(height),
                "fill",
                fill,
                "stroke",
                INK,
                "stroke-width",
                "1.25");
        return this;
    }

    Svg circle(double x, double y, double radius, String fill) {
        html.empty("circle", "cx", point(x), "cy", point(y), "r", point(radius), "fill", fill, "stroke", INK);
        return this;
    }

    /** An open path. */
    Svg path(String points, String dashes) {
        html.empty("path", "d", points, "fill", "none", "stroke", INK, "stroke-width", "2", "stroke-dasharray", dashes);
        return this;
    }

    /** Text that begins, is centred or ends ({@code start}, {@code middle}, {@code end}) at a point. */
    Svg text(double x, double y, String anchor, String text) {
        html.element("text", text, "x", point(x), "y", point(y), "text-anchor", anchor);
        return this;
    }

    /** The same in bold. */
    Svg strong(double x, double y, String text) {
        html.element("text", text, "x", point(x), "y", point(y), "font-weight", "bold");
        return this;
    }

    /** A pattern of slanting lines, to be filled with as {@code url(#id)}. */
    Svg hatch(String id) {
        html.open("defs")
                .open(
                        "pattern",
                        "id",
                        id,
                        "width",
                        6,
                        "height",
                        6,
                        "patternUnits",
                        "userSpaceOnUse",
                        "patternTransform",
                        "rotate(45)")
                .empty("rect", "width", 6, "height", 6, "fill", "#fff")
                .empty("line", "x1", 0, "y1", 0, "x2", 0, "y2", 6, "stroke", INK, "stroke-width", 2.5)
                .close()
                .close();
        return this;
    }

    Html done() {
        return html.close();
    }

    static String point(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }
}
