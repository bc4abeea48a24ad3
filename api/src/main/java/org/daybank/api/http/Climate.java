package org.daybank.api.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.daybank.api.request.ClimateAnswer;
import org.daybank.api.request.ClimatePlace;
import org.daybank.api.wire.FlatForm;
import org.daybank.api.wire.RecordWriter;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.site.EpwReader;
import org.daybank.core.site.WeatherCsvReader;
import org.daybank.core.site.WeatherYear;

/** Reads a weather year from the text of a file and answers the site that it shows. */
public final class Climate {
    /** Largest file that is read; a year of EPW has about 1.6 MB. */
    static final int MAX_BYTES = 4_000_000;

    private static final FlatForm<ClimatePlace> PLACE = new FlatForm<>(ClimatePlace.class);

    private Climate() {}

    /** Answers the site block of a brief. */
    public static void answer(Context context) {
        QueryOptions options = new QueryOptions(context);
        boolean withWeather = options.flag("weather");
        String text = new String(Body.read(context, MAX_BYTES), StandardCharsets.UTF_8);
        if (text.isBlank()) {
            throw new InvalidInput(List.of(new Problem(
                    "",
                    ProblemCode.MISSING,
                    "the body is empty: send the text of an EPW file, or CSV with named columns")));
        }
        WeatherYear weather;
        if (text.startsWith("LOCATION,")) {
            options.refuseOthers();
            weather = EpwReader.read(text);
        } else {
            ClimatePlace place = PLACE.bind(options.others()).value();
            weather = WeatherCsvReader.read(text, place.place(), place.year());
        }
        Answers.json(context, RecordWriter.write(ClimateAnswer.of(weather, withWeather)));
    }
}
