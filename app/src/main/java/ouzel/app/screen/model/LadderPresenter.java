package ouzel.app.screen.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ouzel.app.desk.Condition;
import ouzel.app.desk.ConditionRow;
import ouzel.app.desk.ConditionRow.Holding;
import ouzel.app.desk.Evidence;

/** The conditions of one sampler, what stands in the way first. */
final class LadderPresenter {
    /** Ages up to this are not worth a word, ms. */
    private static final long WORTH_SAYING_MILLIS = 1_000;

    /** An attestation can be renewed when it has no more than this left, s. */
    private static final int RENEW_SECONDS = 30;

    private LadderPresenter() {}

    static LadderView view(List<ConditionRow> rows) {
        boolean linkDown = rows.stream().anyMatch(row -> row.condition() == Condition.LINK && !row.isMet());
        List<LadderView.Row> shown = new ArrayList<>();
        List<String> folded = new ArrayList<>();
        for (ConditionRow row : rows) {
            if (isFolded(row, linkDown)) {
                folded.add(row.condition().words());
            } else if (!row.isMet() || row.isDisputed()) {
                shown.add(open(row));
            }
        }
        rows.stream()
                .filter(LadderPresenter::isAttestedAndMet)
                .map(LadderPresenter::attested)
                .forEach(shown::add);
        return new LadderView(heading(rows), attention(rows), shown, folded(folded), met(rows));
    }

    /** With the link down nothing measured is known, for one cause: that is one line, not fifteen. */
    private static boolean isFolded(ConditionRow row, boolean linkDown) {
        return linkDown && row.holding() == Holding.UNKNOWN && row.condition() != Condition.LINK;
    }

    private static boolean isAttestedAndMet(ConditionRow row) {
        return row.isMet() && !row.isDisputed() && row.evidence() == Evidence.ATTESTED;
    }

    /** Both judges must agree before a sampler may be armed. */
    static boolean holdsForBoth(ConditionRow row) {
        return row.isMet() && !row.isDisputed();
    }

    private static LadderView.Row open(ConditionRow row) {
        String words = row.condition().words() + "   " + valueAgainstLimit(row);
        String detail = row.isDisputed() ? dispute(row) : row.condition().action() + "  ·  " + known(row);
        return new LadderView.Row(row.condition(), sign(row), words, detail, confirm(row));
    }

    private static LadderView.Row attested(ConditionRow row) {
        String words = row.condition().words() + "   " + row.person() + ", " + Words.left(row.expiresInSeconds());
        String confirm = row.expiresInSeconds() <= RENEW_SECONDS ? "Renew…" : "";
        return new LadderView.Row(row.condition(), LadderView.Sign.MET, words, "", confirm);
    }

    private static LadderView.Sign sign(ConditionRow row) {
        if (row.isDisputed()) {
            return LadderView.Sign.DISPUTED;
        }
        return switch (row.holding()) {
            case MET -> LadderView.Sign.MET;
            case UNMET -> LadderView.Sign.UNMET;
            case UNKNOWN -> LadderView.Sign.UNKNOWN;
        };
    }

    private static String valueAgainstLimit(ConditionRow row) {
        return row.limit().isEmpty() ? row.value() : row.value() + " (limit " + row.limit() + ")";
    }

    /** The payload waits before it believes a good value, so that its "not yet" is no contradiction. */
    private static String dispute(ConditionRow row) {
        String console = row.isMet() ? "holds" : "does not hold";
        String payload = row.isMet() ? "not yet" : "holds";
        return "console: " + console + "; payload: " + payload + "  ·  "
                + row.condition().action();
    }

    private static String known(ConditionRow row) {
        String age = row.ageMillis() > WORTH_SAYING_MILLIS ? ", " + Words.age(row.ageMillis()) : "";
        return row.evidence().word() + age;
    }

    private static String confirm(ConditionRow row) {
        return row.evidence() == Evidence.ATTESTED && !row.isMet() ? "Confirm…" : "";
    }

    private static String heading(List<ConditionRow> rows) {
        long met = rows.stream().filter(LadderPresenter::holdsForBoth).count();
        return met == rows.size()
                ? "All " + met + " conditions hold"
                : (rows.size() - met) + " of " + rows.size() + " conditions not met";
    }

    private static Attention attention(List<ConditionRow> rows) {
        boolean disputed = rows.stream().anyMatch(row -> row.isDisputed() && !row.isMet());
        return disputed ? Attention.NOTICE : Attention.CALM;
    }

    private static String folded(List<String> words) {
        return words.isEmpty() ? "" : words.size() + " unknown until the link is fresh: " + String.join(", ", words);
    }

    private static String met(List<ConditionRow> rows) {
        List<String> words = rows.stream()
                .filter(row -> row.isMet() && !row.isDisputed() && !isAttestedAndMet(row))
                .map(row -> row.condition().words())
                .collect(Collectors.toList());
        return words.isEmpty() ? "" : words.size() + " met: " + String.join(", ", words);
    }
}
