package ouzel.app.screen;

import java.awt.Font;
import java.awt.font.TextAttribute;
import java.util.Map;
import ouzel.app.screen.model.Standing;

/** The same font, struck through when its number is stale. */
final class AmountFonts {
    private AmountFonts() {}

    static Font of(Font font, Standing standing) {
        Boolean strike = standing == Standing.STALE ? TextAttribute.STRIKETHROUGH_ON : Boolean.FALSE;
        return font.deriveFont(Map.of(TextAttribute.STRIKETHROUGH, strike));
    }
}
