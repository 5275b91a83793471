package startwater.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import startwater.bench.UnitSystem;
import startwater.drill.Scenario;
import startwater.text.Language;
import startwater.text.Refusal;
import startwater.text.Texts;

class FormTest {
    @ParameterizedTest
    @FieldSource("startwater.rehearse.Systems#ALL")
    void aFormReadsItsOwnFileBack(String name) throws FormFile.Unreadable {
        Form form = Systems.form(name);
        assertThat(FormFile.parse(FormFile.write(form), name)).isEqualTo(form);
        assertThat(SystemChecks.of(form)).noneMatch(f -> f.code().equals("unreadable"));
    }

    @Test
    void whatWasTypedBareKeepsItsMeaningInOtherUnits() {
        Form metric = new Form(UnitSystem.METRIC, Map.of(Entry.VOLUME, "200", Entry.ROOM, "20", Entry.MASS, "2 lb"));
        OwnSystem us = OwnSystem.of(metric.in(UnitSystem.US));
        assertThat(us.vessel().volumeL()).isEqualTo(200);
        assertThat(us.vessel().roomC()).isEqualTo(20);
        assertThat(us.stock().massG()).isCloseTo(907.18, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        "volume, METRIC, 55 gal, 208.198",
        "volume, US, 55, 208.198",
        "volume, US, '200 L', 200",
        "volume, METRIC, '1,5 m3', 1500",
        "mass, US, 1, 28.3495",
        "mass, METRIC, 0.5 lb, 226.796",
        "room, US, 77, 25",
        "room, METRIC, 77 °F, 25",
        "tapAlkalinity, METRIC, 5 dKH, 89.24",
        "tapAlkalinity, METRIC, 2 meq/L, 100.08",
        "airFlow, US, 2, 56.634",
        "pumpFlow, METRIC, 30 L/min, 1800",
    })
    void anAnswerIsReadInItsUnit(String key, UnitSystem system, String typed, double canonical) {
        Entry entry = Entry.of(key).orElseThrow();
        Form form = new Form(system, Map.of(entry, typed));
        assertThat(FormReader.refusal(form, entry)).isNull();
        assertThat(Objects.requireNonNull(new FormReader(form).number(entry))).isCloseTo(canonical, within(0.001));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "volume|12 parsecs|reh.entry.unit",
                "volume|much|entry.noNumber",
                "volume|-3|entry.negative",
                "count|2.5|reh.entry.whole",
                "tapPh|12|reh.entry.range",
                "media|gravel of the moon|reh.entry.choice",
                "visits|25|reh.entry.hours",
                "visits|noon|reh.entry.hours",
                "away|14-12|reh.entry.days",
                "away|Monday|reh.entry.days",
            })
    void whatCannotBeReadIsRefusedWithAReasonAndKept(String key, String typed, String reason) {
        Entry entry = Entry.of(key).orElseThrow();
        Form form = new Form(UnitSystem.METRIC, Map.of(entry, typed));
        Refusal refusal = Objects.requireNonNull(FormReader.refusal(form, entry));
        assertThat(refusal.key()).isEqualTo(reason);
        for (Language language : Language.values()) {
            assertThat(refusal.say(RehearseTexts.of(language))).isNotBlank();
        }
        assertThat(form.answer(entry)).isEqualTo(typed);
        assertThat(Systems.codes(SystemChecks.of(form), Finding.Weight.REFUSE)).contains("unreadable");
    }

    @Test
    void hoursAndDaysAreSortedAndJoined() {
        Form form = new Form(UnitSystem.METRIC, Map.of(Entry.VISITS, "17:30, 7", Entry.AWAY, "20, 12-14 15"));
        OwnSystem own = OwnSystem.of(form);
        assertThat(own.visits()).containsExactly(7.0, 17.5);
        assertThat(own.away()).isEqualTo(List.of(new Scenario.Away(12, 16), new Scenario.Away(20, 21)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nonsense|reh.form.noJson",
                "[1]|reh.form.noAnswers",
                "{\"schema\":1}|reh.form.noAnswers",
                "{\"schema\":2,\"answers\":{}}|reh.form.schema",
                "{\"schema\":1,\"answers\":{\"volum\":\"1\"}}|reh.form.unknownKey",
                "{\"schema\":1,\"answers\":{\"volume\":[1]}}|reh.form.noText",
            })
    void aFileThatIsNoFormIsRefusedInOneSentence(String text, String reason) {
        assertThatThrownBy(() -> FormFile.parse(text, "my.form.json"))
                .isInstanceOfSatisfying(FormFile.Unreadable.class, e -> {
                    assertThat(e.reason().key()).isEqualTo(reason);
                    assertThat(e.reason().say(RehearseTexts.of(Language.EN))).contains("my.form.json");
                });
    }

    @Test
    void aNumberInAFormNeedsNoQuotes() throws FormFile.Unreadable {
        Form form = FormFile.parse("{\"schema\":1,\"answers\":{\"volume\":200,\"count\":12}}", "f");
        assertThat(OwnSystem.of(form).vessel().volumeL()).isEqualTo(200);
        assertThat(OwnSystem.of(form).stock().count()).isEqualTo(12);
    }

    /** Every line of the form is named and explained in both languages, and every choice is a word. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void everyLineHasItsHelp(Language language) {
        Texts texts = RehearseTexts.of(language);
        for (Entry entry : Entry.values()) {
            assertThat(texts.text("reh.label." + entry.key())).isNotBlank().hasSizeLessThan(40);
            assertThat(texts.text("reh.help." + entry.key())).hasSizeBetween(15, 230);
            entry.options().forEach(option -> assertThat(texts.text("reh.choice." + option))
                    .isNotBlank());
        }
    }
}
