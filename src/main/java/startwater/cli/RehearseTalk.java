package startwater.cli;

import startwater.bench.UnitSystem;
import startwater.rehearse.Entry;
import startwater.rehearse.Form;
import startwater.rehearse.FormReader;
import startwater.text.Refusal;
import startwater.text.Texts;

/** Asks the form line by line. {@code ?} tells how to find a number; an empty line means unknown. */
final class RehearseTalk {
    private static final String HELP = "?";

    private final Terminal terminal;
    private final Texts texts;

    RehearseTalk(Terminal terminal, Texts texts) {
        this.terminal = terminal;
        this.texts = texts;
    }

    /** The form as it was answered; the end of the input ends it there, and what is left is unknown. */
    Form ask(UnitSystem system) {
        Form form = new Form(system, Form.EMPTY.answers());
        terminal.say(texts.text("reh.ask.how"));
        try {
            for (Entry.Section section : Entry.Section.values()) {
                terminal.gap();
                terminal.say("== " + texts.text("reh.section." + section));
                for (Entry entry : Entry.in(section)) {
                    form = form.with(entry, answer(form, entry));
                }
            }
        } catch (Terminal.EndOfInput end) {
            terminal.say(texts.text("reh.ask.ended"));
        }
        terminal.gap();
        return form;
    }

    private String answer(Form form, Entry entry) {
        return terminal.ask(question(form, entry), typed -> {
            if (typed.equals(HELP)) {
                return Terminal.Answer.refused(texts.text("reh.help." + entry.key()));
            }
            Refusal refusal = FormReader.refusal(form.with(entry, typed), entry);
            return refusal == null ? Terminal.Answer.of(typed) : Terminal.Answer.refused(refusal.say(texts));
        });
    }

    private String question(Form form, Entry entry) {
        String label = texts.text("reh.label." + entry.key());
        String unit = entry.measure().unit(form.units());
        if (!entry.options().isEmpty()) {
            return label + " (" + String.join(", ", entry.options()) + ")";
        }
        return unit.isEmpty() ? label : label + ", " + unit;
    }
}
