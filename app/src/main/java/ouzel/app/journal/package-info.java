/**
 * The crash-proof record of a sortie: everything that happened to the desk, in order, in one file that can be folded
 * again to the same state.
 *
 * <p>A file is a {@link ouzel.app.journal.JournalHeader} followed by the records of {@link
 * ouzel.app.journal.JournalCodec}. The pairing key is no stimulus and so can be in no journal.
 */
package ouzel.app.journal;
