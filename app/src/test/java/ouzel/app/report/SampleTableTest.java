package ouzel.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Sample;
import ouzel.app.estimate.Amount;
import ouzel.app.estimate.Verdict;
import ouzel.app.estimate.Verdict.Grade;
import ouzel.protocol.message.Sampler;

class SampleTableTest {
    private static final Amount GOT = new Amount(258.04, 4.5);

    @Test
    void aSampleIsOneRowUnderItsHeadings() throws IOException {
        String text = text(sample("reed bed", GOT, OptionalDouble.of(261.26), "dose reached", "pump as when new"));

        assertThat(text)
                .isEqualTo("sample,sampler,site,asked,asked_unit,got,plus_minus,unit,true,verdict,reasons,"
                        + "started_utc,ended_utc,order_id\r\n"
                        + "3,water,reed bed,260,mL,258.0,9.0,mL,261.3,accepted,dose reached; pump as when new,"
                        + "2026-05-04T07:30:00Z,2026-05-04T07:30:31.500Z,4294967295\r\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "\tx", "\rx", "\nx"})
    void aCellThatASpreadsheetWouldCalculateGetsAnApostrophe(String words) throws IOException {
        CSVRecord row = row(sample(words, GOT, OptionalDouble.empty(), words));

        assertThat(row.get("site")).isEqualTo("'" + words);
        assertThat(row.get("reasons")).isEqualTo("'" + words);
    }

    @Test
    void quotesCommasAndLineEndsInASiteComeBackAsTheyWere() throws IOException {
        String site = "pond \"7\", north\r\nbank";

        assertThat(row(sample(site, GOT, OptionalDouble.empty(), "x")).get("site"))
                .isEqualTo(site);
    }

    @Test
    void aNegativeAmountStaysANumber() throws IOException {
        assertThat(row(sample("x", new Amount(-0.26, 0), OptionalDouble.empty(), "x"))
                        .get("got"))
                .isEqualTo("-0.3");
    }

    @Test
    void whatIsNotKnownIsEmpty() throws IOException {
        CSVRecord row = row(sample("x", new Amount(Double.NaN, Double.POSITIVE_INFINITY), OptionalDouble.empty(), "x"));

        assertThat(List.of(row.get("got"), row.get("plus_minus"), row.get("true")))
                .containsOnly("");
    }

    @Test
    void theDecimalSignIsAPointInEveryCountry() throws IOException {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(row(sample("x", GOT, OptionalDouble.empty(), "x")).get("got"))
                    .isEqualTo("258.0");
        } finally {
            Locale.setDefault(before);
        }
    }

    private static Sample sample(String site, Amount got, OptionalDouble truth, String... reasons) {
        return new Sample(
                3,
                Sampler.WATER,
                site,
                0xFFFF_FFFFL,
                260,
                got,
                truth,
                new Verdict(Grade.ACCEPTED, List.of(reasons)),
                new Moment(1, 1_777_879_800_000L),
                new Moment(2, 1_777_879_831_500L));
    }

    private static String text(Sample sample) throws IOException {
        StringBuilder text = new StringBuilder();
        SampleTable.write(List.of(sample), text);
        return text.toString();
    }

    private static CSVRecord row(Sample sample) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text(sample), format)) {
            return parser.getRecords().get(0);
        }
    }
}
