package ouzel.app.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.Test;

/** Contrast of every pair of colours, after WCAG 2.2: relative luminance, contrast ratio, criterion 1.4.3. */
class ContrastTest {
    private static final String FOREGROUND = ".foreground";

    @Test
    void blackOnWhiteIsTwentyOneToOne() {
        assertThat(contrast(Color.BLACK, Color.WHITE)).isEqualTo(21.0);
    }

    @Test
    void everyPairOfTheLightLookIsAtLeastFourAndAHalfToOne() throws IOException {
        Properties look = look();
        List<String> roles = look.stringPropertyNames().stream()
                .filter(key -> key.startsWith("Ouzel.") && key.endsWith(FOREGROUND))
                .map(key -> key.substring(0, key.length() - FOREGROUND.length()))
                .toList();

        assertThat(roles).hasSizeGreaterThan(15);
        assertThat(roles)
                .allSatisfy(role -> assertThat(
                                contrast(color(look, role + FOREGROUND), color(look, role + ".background")))
                        .as(role)
                        .isGreaterThanOrEqualTo(4.5));
    }

    private static Properties look() throws IOException {
        Properties properties = new Properties();
        try (InputStream stream = LightLook.class.getResourceAsStream("LightLook.properties")) {
            properties.load(stream);
        }
        return properties;
    }

    private static Color color(Properties look, String key) {
        return Color.decode(look.getProperty(key));
    }

    private static double contrast(Color one, Color other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
