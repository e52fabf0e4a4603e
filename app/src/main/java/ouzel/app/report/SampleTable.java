package ouzel.app.report;

import java.io.IOException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import ouzel.app.desk.Sample;

/**
 * Samples as a table that any spreadsheet reads: comma-separated, RFC 4180, point as the decimal sign, times in UTC.
 *
 * <p>Cells with words are made harmless: one that a spreadsheet would take for a formula gets an apostrophe in front.
 * Numbers are written as numbers, the negative ones too.
 */
public final class SampleTable {
    /** The columns, in their order; {@code plus_minus} is the half width of the band, k = 2. */
    enum Column {
        SAMPLE,
        SAMPLER,
        SITE,
        ASKED,
        ASKED_UNIT,
        GOT,
        PLUS_MINUS,
        UNIT,
        TRUE,
        VERDICT,
        REASONS,
        STARTED_UTC,
        ENDED_UTC,
        ORDER_ID;

        String heading() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static final String BETWEEN_REASONS = "; ";
    // What a spreadsheet may take for a formula or for the way into one.
    private static final Pattern FORMULA_START = Pattern.compile("^[=+\\-@\\t\\r\\n]");

    private SampleTable() {}

    /**
     * Writes a heading and one row per sample.
     *
     * @param target takes the text; UTF-8 is the caller's matter, closing too
     * @throws IOException if {@code target} fails
     */
    public static void write(List<Sample> samples, Appendable target) throws IOException {
        CSVPrinter printer = new CSVPrinter(target, CSVFormat.RFC4180);
        printer.printRecord(Arrays.stream(Column.values()).map(Column::heading));
        for (Sample sample : samples) {
            printer.printRecord(Arrays.stream(Column.values()).map(column -> cell(column, sample)));
        }
        printer.flush();
    }

    private static String cell(Column column, Sample sample) {
        return switch (column) {
            case SAMPLE -> String.valueOf(sample.number());
            case SAMPLER -> sample.sampler().name().toLowerCase(Locale.ROOT);
            case SITE -> harmless(sample.site());
            case ASKED -> String.valueOf(sample.asked());
            case ASKED_UNIT -> sample.askedUnit();
            case GOT -> amount(sample.got().value());
            case PLUS_MINUS -> amount(sample.got().band());
            case UNIT -> sample.unit();
            case TRUE -> sample.truth().isPresent() ? amount(sample.truth().getAsDouble()) : "";
            case VERDICT -> sample.verdict().grade().word();
            case REASONS ->
                harmless(String.join(BETWEEN_REASONS, sample.verdict().reasons()));
            case STARTED_UTC ->
                Instant.ofEpochMilli(sample.started().utcMillis()).toString();
            case ENDED_UTC -> Instant.ofEpochMilli(sample.ended().utcMillis()).toString();
            case ORDER_ID -> String.valueOf(sample.orderId());
        };
    }

    /** To a tenth; nothing for what is no number. */
    private static String amount(double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%.1f", value) : "";
    }

    private static String harmless(String words) {
        return FORMULA_START.matcher(words).find() ? "'" + words : words;
    }
}
