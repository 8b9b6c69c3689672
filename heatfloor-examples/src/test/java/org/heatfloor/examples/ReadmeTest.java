package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.heatfloor.plan.Plan;
import org.junit.jupiter.api.Test;

/** The README says what is so. */
class ReadmeTest {

    private static final Path TOP = Path.of("..");
    private static final Path PICTURE = TOP.resolve("docs/washroom-plan.svg");

    @Test
    void theTenLinesAreTheOnesThatRun() throws IOException {
        String source = read(Path.of("src/test/java/org/heatfloor/examples/TenLines.java"));
        Matcher body = Pattern.compile("static Plan run\\(\\) \\{(.*?)return plan;", Pattern.DOTALL)
                .matcher(source);
        assertThat(body.find()).isTrue();

        List<String> blocks = blocks("java");
        assertThat(blocks).hasSize(1);
        assertThat(squeezed(blocks.get(0))).isEqualTo(squeezed(body.group(1)));
        assertThat(blocks.get(0).strip().lines()).hasSize(10);
    }

    @Test
    void theTenLinesPlanAPorch() {
        PrintStream before = System.out;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        Plan plan;
        try {
            plan = TenLines.run();
        } finally {
            System.setOut(before);
        }
        assertThat(plan.status()).isEqualTo(Plan.Status.COMPLETE);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .startsWith("P20: LINESTRING (")
                .contains("NOTE");
    }

    @Test
    void theShellBlockHoldsTheJobAndTheTests() throws IOException {
        assertThat(blocks("sh")).hasSize(1);
        List<String> lines = blocks("sh").get(0).strip().lines().toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).contains("exec:java", "heatfloor-examples/rooms/washroom.json");
        assertThat(lines.get(1)).isEqualTo("mvn -B verify");
        assertThat(TOP.resolve("heatfloor-examples/rooms/washroom.json")).exists();
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        for (String page : List.of("README.md", "DEVELOPERS.md", "docs/room-files.md")) {
            Path file = TOP.resolve(page);
            Matcher link = Pattern.compile("\\]\\(([^)#]+)\\)").matcher(read(file));
            while (link.find()) {
                assertThat(file.resolveSibling(link.group(1)))
                        .as("link in %s", page)
                        .exists();
            }
        }
    }

    /** Run with {@code -Dheatfloor.rewrite=true} to take a new picture, and look at it. */
    @Test
    void thePictureIsTheOneThatComesOut() throws IOException {
        String drawn = Schoolhouse.of("washroom").drawing();
        if (Boolean.getBoolean("heatfloor.rewrite")) {
            Files.writeString(PICTURE, drawn);
        }
        assertThat(drawn.equals(read(PICTURE)))
                .as("docs/washroom-plan.svg is the drawing as it comes out")
                .isTrue();
    }

    private static List<String> blocks(String language) throws IOException {
        List<String> blocks = new ArrayList<>();
        Matcher block = Pattern.compile("```" + language + "\\n(.*?)```", Pattern.DOTALL)
                .matcher(read(TOP.resolve("README.md")));
        while (block.find()) {
            blocks.add(block.group(1));
        }
        return blocks;
    }

    private static String squeezed(String code) {
        return code.replaceAll("\\s+", "");
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }
}
