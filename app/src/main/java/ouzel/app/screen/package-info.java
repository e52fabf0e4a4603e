/** The desk as it is seen and touched: thin Swing views that assign what the presentation model says and forward acts. */
package ouzel.app.screen;
