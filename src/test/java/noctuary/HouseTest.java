package noctuary;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The order of the house, read from the table in DEVELOPERS.md and held against the classes. */
@AnalyzeClasses(packages = "noctuary", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
    private static final Pattern ROW = Pattern.compile("\\| \\d+ \\| `(\\w+)` \\|[^|]*\\|([^|]*)\\|.*");

    /** Packages that may be used from one room only. */
    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "nom.tam..", List.of("fits"),
            "freemarker..", List.of("site"),
            "com.vladsch.flexmark..", List.of("entry"),
            "com.fasterxml.jackson..", List.of("entry", "measure", "site", "journal"),
            "picocli..", List.of("cli"),
            "org.shredzone..", List.of("sky"),
            "org.hipparchus..", List.of("stats"),
            "javax.imageio..", List.of("image", "draw"));

    /** Room to the rooms it may import, as the table says, in order of floors. */
    private static Map<String, List<String>> floors() throws IOException {
        Map<String, List<String>> floors = new java.util.LinkedHashMap<>();
        for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                List<String> below = new ArrayList<>();
                Matcher name = Pattern.compile("`(\\w+)`").matcher(row.group(2));
                while (name.find()) {
                    below.add(name.group(1));
                }
                floors.put(row.group(1), below);
            }
        }
        return floors;
    }

    @Test
    void theTableNamesEveryRoomAndOnlyPointsDown() throws IOException {
        Map<String, List<String>> floors = floors();
        try (var rooms = Files.list(Path.of("src/main/java/noctuary"))) {
            assertThat(rooms.filter(Files::isDirectory).map(p -> p.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(floors.keySet());
        }
        List<String> above = new ArrayList<>();
        floors.forEach((room, below) -> {
            assertThat(above).as("rooms that %s imports", room).containsAll(below);
            above.add(room);
        });
    }

    @ArchTest
    static void roomsImportOnlyWhatTheTableAllows(JavaClasses house) throws IOException {
        Map<String, List<String>> floors = floors();
        floors.forEach((room, below) -> {
            String[] allowed = below.stream().map(b -> "noctuary." + b + "..").toArray(String[]::new);
            String[] others = floors.keySet().stream()
                    .filter(other -> !other.equals(room) && !below.contains(other))
                    .map(other -> "noctuary." + other + "..")
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage("noctuary." + room + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(others)
                    .because("DEVELOPERS.md lets " + room + " import only " + List.of(allowed))
                    .allowEmptyShould(true)
                    .check(house);
        });
    }

    @ArchTest
    static void librariesStayInTheirRooms(JavaClasses house) {
        LIBRARIES.forEach((library, rooms) -> noClasses()
                .that()
                .resideOutsideOfPackages(
                        rooms.stream().map(r -> "noctuary." + r + "..").toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(house));
    }

    @ArchTest
    static final ArchRule roomsHaveNoCircles =
            SlicesRuleDefinition.slices().matching("noctuary.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule onlyTheCommandLinePrintsAndExits = noClasses()
            .that()
            .resideOutsideOfPackage("noctuary.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule onlyTheCommandLineReadsTheClock = noClasses()
            .that()
            .resideOutsideOfPackage("noctuary.cli..")
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.Clock.class, "systemUTC")
            .orShould()
            .callMethod(java.time.Clock.class, "systemDefaultZone");

    @ArchTest
    static final ArchRule chanceIsSeeded =
            noClasses().should().callConstructor(Random.class).orShould().callMethod(Math.class, "random");

    @ArchTest
    static final ArchRule textHasALocale = noClasses()
            .should()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class)
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .orShould()
            .callMethod(String.class, "getBytes")
            .orShould()
            .callConstructor(String.class, byte[].class);

    @ArchTest
    static final ArchRule namesSayWhatAThingIs = classes()
            .that()
            .resideInAPackage("noctuary..")
            .should()
            .haveNameNotMatching(
                    ".*(Util|Utils|Helper|Manager|Impl|Base|Abstract|Data|Info|Common|Processor|Service)(\\$.*)?");
}
