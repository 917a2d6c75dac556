package noctuary.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import noctuary.journal.Progress;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class QuickLookTest {
    private static final String PROPERTY = "noctuary.quick";

    @AfterEach
    void plainStart() {
        System.clearProperty(PROPERTY);
    }

    @Test
    void aPlainStartMeasuresWhateverThereIs() {
        assertThat(QuickLook.of(Progress.SILENT)).isSameAs(Progress.SILENT);
    }

    @Test
    void aQuickStartMeasuresAFileOrTwoAndGivesMoreBack() {
        System.setProperty(PROPERTY, "true");
        Progress quick = QuickLook.of(Progress.SILENT);
        assertThatCode(() -> {
                    quick.at("measuring", 1, 4000);
                    quick.measured(2);
                })
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> quick.measured(3)).isInstanceOf(QuickLook.TooMuchException.class);
    }
}
