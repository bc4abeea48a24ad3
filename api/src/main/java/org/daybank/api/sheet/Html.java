package org.daybank.api.sheet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Writes elements and text; whatever is text is escaped, so that a load called {@code <script>} is no script. */
final class Html {
    /** Columns that a small screen shows without scrolling. */
    private static final int MOST_NARROW = 4;

    /** What begins with a figure and is longer is a formula, which may break. */
    private static final int LONGEST_FIGURE = 20;

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /**
     * Opens an element.
     *
     * @param attributes name and value in turns
     */
    Html open(String tag, Object... attributes) {
        start(tag, attributes);
        out.append('>');
        open.push(tag);
        return this;
    }

    /** Writes an element without content. */
    Html empty(String tag, Object... attributes) {
        start(tag, attributes);
        out.append("/>");
        return this;
    }

    private void start(String tag, Object... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
    }

    /** Closes the element opened last. */
    Html close() {
        out.append("</").append(open.pop()).append(">\n");
        return this;
    }

    /** Writes text. */
    Html text(Object text) {
        escape(text);
        return this;
    }

    /** Writes an element with nothing but text in it. */
    Html element(String tag, Object text, Object... attributes) {
        start(tag, attributes);
        out.append('>');
        escape(text);
        out.append("</").append(tag).append('>');
        return this;
    }

    /** Writes markup that was made by another of these. */
    Html add(Html made) {
        out.append(made.out);
        return this;
    }

    /** Writes a list. */
    Html list(List<String> items) {
        open("ul");
        items.forEach(item -> element("li", item));
        return close();
    }

    /** Writes a table; the first cell of a row names it, and a cell that holds a figure is not broken. */
    Html table(String caption, List<String> heads, List<List<String>> rows) {
        open("div", "class", "wide", "tabindex", 0, "role", "region", "aria-label", caption)
                .open("table", "class", heads.size() > MOST_NARROW ? "broad" : "small")
                .element("caption", caption)
                .open("thead")
                .open("tr");
        heads.forEach(head -> element("th", head, "scope", "col"));
        close().close().open("tbody");
        for (List<String> row : rows) {
            open("tr").element("th", row.get(0), "scope", "row");
            row.subList(1, row.size()).forEach(this::cell);
            close();
        }
        return close().close().close();
    }

    private void cell(String text) {
        boolean figure = !text.isEmpty()
                && text.length() <= LONGEST_FIGURE
                && (Character.isDigit(text.charAt(0)) || "-−–".indexOf(text.charAt(0)) >= 0);
        if (figure) {
            element("td", text, "class", "figure");
        } else {
            element("td", text);
        }
    }

    /** Writes a style, which HTML takes as it is: text in it is not escaped. */
    Html style(String css) {
        out.append("<style>").append(css).append("</style>");
        return this;
    }

    boolean isEmpty() {
        return out.isEmpty();
    }

    private void escape(Object text) {
        String plain = String.valueOf(text);
        for (int i = 0; i < plain.length(); i++) {
            char letter = plain.charAt(i);
            switch (letter) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(letter < ' ' && letter != '\n' && letter != '\t' ? ' ' : letter);
            }
        }
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
