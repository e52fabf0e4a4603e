/** The desk as it is seen and touched: thin Swing views that show what the presentation model says. */
package ouzel.app.screen;
