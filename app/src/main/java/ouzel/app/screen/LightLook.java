package ouzel.app.screen;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.font.TextAttribute;
import java.util.Map;
import javax.swing.UIManager;
import ouzel.app.screen.model.Attention;

/**
 * The light look: colours and sizes from {@code LightLook.properties} beside this class.
 *
 * <p>Thread: EDT.
 */
public final class LightLook extends FlatLightLaf {
    private static final int FONT = 14;
    private static final int LARGE_FONT = 17;
    private static final int LARGE_WIDTH = 1_800;
    private static final int LARGE_HEIGHT = 1_000;

    /** Makes this the look of every component that is built from now on, with larger letters where there is room. */
    public static void use() {
        use(isLargeScreen() ? LARGE_FONT : FONT);
    }

    /** The same with letters of {@code size} px. */
    static void use(int size) {
        LightLook look = new LightLook();
        look.setExtraDefaults(Map.of("defaultFont", String.valueOf(size)));
        setup(look);
    }

    private static boolean isLargeScreen() {
        return !GraphicsEnvironment.isHeadless()
                && GraphicsEnvironment.getLocalGraphicsEnvironment()
                        .getDefaultScreenDevice()
                        .getDefaultConfiguration()
                        .getBounds()
                        .contains(new Rectangle(LARGE_WIDTH, LARGE_HEIGHT));
    }

    @Override
    public String getName() {
        return "Ouzel light";
    }

    static Color background(String role) {
        return UIManager.getColor("Ouzel." + role + ".background");
    }

    static Color foreground(String role) {
        return UIManager.getColor("Ouzel." + role + ".foreground");
    }

    static Color background(Attention attention) {
        return background(role(attention));
    }

    static Color foreground(Attention attention) {
        return foreground(role(attention));
    }

    /** The colour of text of this weight on a lane or on the desk itself. */
    static Color text(Attention attention) {
        return switch (attention) {
            case CALM -> foreground("quiet");
            case ACTIVE, NOTICE, ALARM -> foreground(role(attention) + "Text");
        };
    }

    static Font font(float scale, boolean bold) {
        Font base = UIManager.getFont("defaultFont");
        return base.deriveFont(bold ? Font.BOLD : Font.PLAIN, Math.round(base.getSize2D() * scale));
    }

    static Font struckThrough(Font font) {
        return font.deriveFont(Map.of(TextAttribute.STRIKETHROUGH, TextAttribute.STRIKETHROUGH_ON));
    }

    private static String role(Attention attention) {
        return switch (attention) {
            case CALM -> "calm";
            case ACTIVE -> "active";
            case NOTICE -> "notice";
            case ALARM -> "alarm";
        };
    }
}
