package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.classroom.ClassWords;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.content.SkillMap;
import startwater.drill.Scenario;
import startwater.page.Html;
import startwater.text.Language;

class PrintCommandTest {
    private static final Pattern TAG = Pattern.compile("<(/?)([a-z0-9]+)[^>]*?(/?)>");
    private static final List<String> EMPTY = List.of("meta");

    @TempDir
    Path folder;

    private static String page(String what, Language language) {
        return PrintCommand.page(what, ClassWords.texts(language), CliTexts.of(language));
    }

    /** Every element is closed in its order, and nothing is fetched from anywhere. */
    private static void sound(String page) {
        assertThat(page).startsWith("<!DOCTYPE html>").doesNotContain("<script", "src=", "href=", "url(", "@import");
        java.util.ArrayDeque<String> open = new java.util.ArrayDeque<>();
        Matcher tags = TAG.matcher(page.substring(page.indexOf("<html")));
        while (tags.find()) {
            if (EMPTY.contains(tags.group(2)) || !tags.group(3).isEmpty()) {
                continue;
            }
            if (tags.group(1).isEmpty()) {
                open.push(tags.group(2));
            } else {
                assertThat(open.pop()).isEqualTo(tags.group(2));
            }
        }
        assertThat(open).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyLessonIsAPageOfItsOwn(Language language) {
        for (Lesson lesson : Library.shipped().lessons(language.code())) {
            String page = page(lesson.id(), language);
            sound(page);
            assertThat(page).contains("<html lang=\"" + language.code() + "\">", Html.text(lesson.title()));
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyDrillHasATeachersSheetWithThePublishedUnits(Language language) {
        for (Scenario drill : Library.shipped().scenarios()) {
            String page = page(drill.id(), language);
            sound(page);
            assertThat(page).contains(Html.text(drill.words(language.code()).goal()));
            for (String skill : drill.skills()) {
                assertThat(page).contains(Html.text(SkillMap.of(skill).get(0).unit()));
            }
        }
    }

    @Test
    void itWritesAFileAndSaysWhatThereIs() throws IOException {
        Path file = folder.resolve("lesson.html");
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] print = {"print", "01-toxic-ammonia", "--lang", "es", "--out", file.toString()};
        assertThat(Startwater.run(print, new PrintWriter(out, true), new PrintWriter(err, true), wishes -> 0))
                .isZero();
        sound(Files.readString(file));
        String[] unknown = {"print", "moon-landing"};
        assertThat(Startwater.run(unknown, new PrintWriter(out, true), new PrintWriter(err, true), wishes -> 0))
                .isEqualTo(2);
        assertThat(err.toString()).contains("moon-landing").doesNotContain("Exception");
    }
}
