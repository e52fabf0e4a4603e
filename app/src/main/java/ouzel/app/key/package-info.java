/** Pairing keys on disk: files that their owner alone can read. */
package ouzel.app.key;
