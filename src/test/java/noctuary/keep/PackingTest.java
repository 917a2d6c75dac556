package noctuary.keep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackingTest {
    record Named<T>(T value, String name) {}

    record All(
            double real,
            int whole,
            long longer,
            boolean flag,
            String text,
            Optional<Named<Double>> maybe,
            OptionalDouble maybeReal,
            OptionalInt maybeWhole,
            List<Named<Instant>> many,
            Set<DayOfWeek> days,
            Map<String, LocalDate> dates,
            BigDecimal exact) {}

    record Open(Object anything) {}

    private static final Packing<All> PACKING = Packing.of(All.class);

    private static All all(double real) {
        return new All(
                real,
                -7,
                Long.MIN_VALUE,
                true,
                "Größe λ 🜨 " + "long ".repeat(30),
                Optional.of(new Named<>(-0.0, "a")),
                OptionalDouble.of(Double.POSITIVE_INFINITY),
                OptionalInt.empty(),
                List.of(
                        new Named<>(Instant.parse("2025-06-14T22:30:00.123456789Z"), "a"),
                        new Named<>(Instant.MIN, "")),
                Set.of(DayOfWeek.MONDAY, DayOfWeek.SUNDAY),
                Map.of("x", LocalDate.of(1969, 7, 20)),
                new BigDecimal("120.50"));
    }

    @Test
    void whatWasPackedComesBackToTheBit() {
        for (double real : new double[] {Math.PI, Double.NaN, Double.MIN_VALUE, -0.0}) {
            assertThat(PACKING.unpack(PACKING.pack(all(real)))).contains(all(real));
        }
    }

    @Test
    void damagedBytesGiveNothingOrAValueButNeverTrouble() {
        byte[] whole = PACKING.pack(all(1));
        for (int length = 0; length < whole.length; length++) {
            assertThat(PACKING.unpack(Arrays.copyOf(whole, length))).isEmpty();
        }
        Random random = new Random(3);
        for (int i = 0; i < 20_000; i++) {
            byte[] damaged = whole.clone();
            damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
            PACKING.unpack(damaged);
        }
    }

    @Test
    void theShapeTellsOneRecordFromAnother() {
        record One(int a, String b) {}
        record Two(int a, String c) {}
        assertThat(Packing.of(One.class).shape())
                .isNotEqualTo(Packing.of(Two.class).shape());
    }

    @Test
    void whatCouldBeAnythingIsRefused() {
        assertThatThrownBy(() -> Packing.of(Open.class)).isInstanceOf(IllegalArgumentException.class);
    }

    private record Number(int value) {
        static final Packing<Number> PACKING = Packing.of(Number.class);
    }

    private static int recall(Memo memo, String key, int work) {
        return memo.recall("numbers", Number.PACKING, key, () -> new Number(work))
                .value();
    }

    @Test
    void aMemoForgetsWhatNobodyAskedForAndWhatAnotherProgramWorkedOut(@TempDir Path folder) {
        String a = new Digest().text("a").hex();
        String b = new Digest().text("b").hex();
        Memo first = Memo.in(folder, "1");
        assertThat(recall(first, a, 1)).isEqualTo(1);
        assertThat(recall(first, b, 2)).isEqualTo(2);
        first.save();
        Memo second = Memo.in(folder, "1");
        assertThat(recall(second, a, 9)).isEqualTo(1);
        assertThat(recall(second, "", 7)).isEqualTo(7);
        second.save();
        assertThat(recall(Memo.in(folder, "2"), a, 5)).isEqualTo(5);
        assertThat(recall(Memo.in(folder, "1"), a, 5)).isEqualTo(1);
    }

    @Test
    void aDamagedMemoWorksAnew(@TempDir Path folder) throws Exception {
        String key = new Digest().text("a").hex();
        Memo first = Memo.in(folder, "1");
        recall(first, key, 1);
        first.save();
        Path file;
        try (var all = Files.walk(folder)) {
            file = all.filter(Files::isRegularFile).findFirst().orElseThrow();
        }
        byte[] whole = Files.readAllBytes(file);
        for (int i = 0; i < whole.length; i++) {
            byte[] damaged = whole.clone();
            damaged[i] ^= 0x10;
            Files.write(file, damaged);
            assertThat(recall(Memo.in(folder, "1"), key, 4)).as("byte " + i).isEqualTo(4);
        }
    }
}
