/** The serial line as it is in the field: pulled, renamed, restarted, noisy, silent. */
package ouzel.app.field;
