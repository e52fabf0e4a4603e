/** What the screen shows and what a key press means, as pure functions of the desk's state: no Swing, no clock. */
package ouzel.app.screen.model;
