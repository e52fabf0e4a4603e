/** What tests of several packages share. */
package ouzel.app.testing;
