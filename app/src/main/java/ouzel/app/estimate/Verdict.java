package ouzel.app.estimate;

import java.util.List;

/**
 * What a draw or stroke is worth.
 *
 * @param grade accepted, suspect or void
 * @param reasons every reason for that grade, in plain words; never empty
 */
public record Verdict(Grade grade, List<String> reasons) {
    /** What a sample is worth. */
    public enum Grade {
        /** Nothing measured speaks against it. */
        ACCEPTED("accepted"),
        /** Something speaks against it; a person decides. */
        SUSPECT("suspect"),
        /** There is no sample, or it cannot be used. */
        VOID("void");

        private final String word;

        Grade(String word) {
            this.word = word;
        }

        /** The word on the screen and in the files. */
        public String word() {
            return word;
        }
    }

    public Verdict {
        reasons = List.copyOf(reasons);
    }
}
