package org.daybank.api.sheet;

import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Twelve months drawn as pairs of bars or as lines, told apart by pattern and dash, so that grey paper shows them as well. */
final class Plot {
    private static final int WIDTH = 660;
    private static final int HEIGHT = 262;
    private static final int LEFT = 48;
    private static final int TOP = 26;
    private static final int BOTTOM = 212;
    private static final int MONTH = (WIDTH - LEFT) / 12;
    private static final int BAR = 18;
    private static final int GRID_LINES = 4;
    private static final int KEY_STEP = 300;
    private static final String SOLID = "#555";
    private static final double[] ROUND = {1, 1.2, 1.6, 2, 2.4, 3.2, 4, 5, 6, 8};

    private final Svg svg;
    private final double most;

    /**
     * One figure for each month.
     *
     * @param name in the key
     * @param monthly from January
     */
    record Series(String name, List<Double> monthly) {
        double in(Month month) {
            return monthly.get(month.getValue() - 1);
        }
    }

    private Plot(String id, String title, String told, String unit, double most) {
        this.svg = new Svg(id, WIDTH, HEIGHT, title, told);
        this.most = most;
        frame(unit);
    }

    /** Two bars for each month: the first hatched, the second solid. */
    static Html bars(String id, String title, String told, String unit, Series hatched, Series solid) {
        Plot plot = new Plot(id, title, told, unit, axis(hatched, solid));
        String hatch = "url(#" + id + "-hatch)";
        plot.svg.hatch(id + "-hatch");
        for (Month month : Month.values()) {
            double middle = plot.middle(month);
            plot.bar(middle - BAR - 1, hatched.in(month), hatch);
            plot.bar(middle + 1, solid.in(month), SOLID);
        }
        plot.svg.rectangle(LEFT, HEIGHT - 18, 14, 12, hatch).text(LEFT + 22, HEIGHT - 8, "start", hatched.name());
        plot.svg
                .rectangle(LEFT + KEY_STEP, HEIGHT - 18, 14, 12, SOLID)
                .text(LEFT + KEY_STEP + 22, HEIGHT - 8, "start", solid.name());
        return plot.svg.done();
    }

    /** Lines from month to month, in percent: the first solid with full dots, the second dashed with open ones. */
    static Html lines(String id, String title, String told, Series solid, Series dashed) {
        Plot plot = new Plot(id, title, told, "%", 100);
        plot.line(solid, "none", SOLID);
        plot.line(dashed, "6 4", "#fff");
        plot.lineKey(LEFT, solid.name(), "none", SOLID);
        plot.lineKey(LEFT + KEY_STEP, dashed.name(), "6 4", "#fff");
        return plot.svg.done();
    }

    /** The next round figure over all values. */
    private static double axis(Series... all) {
        double most = Stream.of(all)
                .flatMap(series -> series.monthly().stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
        if (most <= 0) {
            return 1;
        }
        double ten = Math.pow(10, Math.floor(Math.log10(most)));
        for (double step : ROUND) {
            if (most <= step * ten) {
                return step * ten;
            }
        }
        return 10 * ten;
    }

    private void frame(String unit) {
        svg.text(0, TOP - 14, "start", unit);
        for (int i = 0; i <= GRID_LINES; i++) {
            double figure = most * i / GRID_LINES;
            svg.faintLine(LEFT, y(figure), WIDTH, y(figure)).text(LEFT - 8, y(figure) + 4, "end", figure(figure));
        }
        for (Month month : Month.values()) {
            svg.text(middle(month), BOTTOM + 18, "middle", Words.of(month));
        }
    }

    private double middle(Month month) {
        return LEFT + (month.getValue() - 1) * MONTH + MONTH / 2.0;
    }

    private double y(double figure) {
        return BOTTOM - figure / most * (BOTTOM - TOP);
    }

    private void bar(double x, double figure, String fill) {
        svg.rectangle(x, y(figure), BAR, BOTTOM - y(figure), fill);
    }

    private void line(Series series, String dashes, String fill) {
        StringBuilder path = new StringBuilder();
        for (Month month : Month.values()) {
            path.append(path.isEmpty() ? "M" : "L")
                    .append(Svg.point(middle(month)))
                    .append(' ')
                    .append(Svg.point(y(series.in(month))));
        }
        svg.path(path.toString(), dashes);
        for (Month month : Month.values()) {
            svg.circle(middle(month), y(series.in(month)), 3.5, fill);
        }
    }

    private void lineKey(int x, String name, String dashes, String fill) {
        svg.path("M%s %sL%s %s".formatted(x, HEIGHT - 12, x + 36, HEIGHT - 12), dashes)
                .circle(x + 18, HEIGHT - 12, 3.5, fill)
                .text(x + 44, HEIGHT - 8, "start", name);
    }

    private static String figure(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.2f", value).replaceAll("0$", "");
    }
}
