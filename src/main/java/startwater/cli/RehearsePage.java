package startwater.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.rehearse.Finding;
import startwater.rehearse.Form;
import startwater.rehearse.Outlook;
import startwater.rehearse.OutlookText;
import startwater.rehearse.Spread;
import startwater.text.Texts;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What {@code rehearse} prints: for people and for machines. JSON is metric whatever the form was in. */
record RehearsePage(Form form, Texts texts) {
    String refused(List<Finding> findings) {
        return findings(findings) + texts.text("reh.out.refused") + "\n";
    }

    String text(List<Finding> findings, Outlook outlook) {
        StringBuilder page = new StringBuilder();
        String name = form.answer(startwater.rehearse.Entry.NAME);
        page.append(texts.text("reh.out.title", name.isEmpty() ? texts.text("reh.drill.title") : name))
                .append('\n')
                .append(texts.text("reh.out.tanks", outlook.tanks(), outlook.days()))
                .append("\n\n");
        new OutlookText(outlook, texts, form.units())
                .rows()
                .forEach(row ->
                        page.append(row.what()).append(": ").append(row.much()).append('\n'));
        page.append('\n')
                .append(texts.text("reh.out.readyMeans"))
                .append('\n')
                .append(texts.text("reh.out.caution"))
                .append("\n\n");
        return page + findings(findings);
    }

    private String findings(List<Finding> findings) {
        if (findings.isEmpty()) {
            return texts.text("reh.out.noFindings") + "\n";
        }
        StringBuilder lines = new StringBuilder();
        for (Finding.Weight weight : Finding.Weight.values()) {
            List<Finding> those =
                    findings.stream().filter(f -> f.weight() == weight).toList();
            if (!those.isEmpty()) {
                lines.append(texts.text("reh.weight." + weight)).append('\n');
                those.forEach(f -> lines.append("  ")
                        .append(texts.text("reh.label." + f.entry().key()))
                        .append(": ")
                        .append(f.reason(texts, form.units()))
                        .append(' ')
                        .append(f.advice(texts, form.units()))
                        .append('\n'));
            }
        }
        return lines.toString();
    }

    String json(List<Finding> findings, @Nullable Outlook outlook) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("possible", outlook != null);
        ArrayNode all = root.putArray("findings");
        findings.forEach(f -> all.addObject()
                .put("weight", f.weight().name().toLowerCase(java.util.Locale.ROOT))
                .put("entry", f.entry().key())
                .put("code", f.code())
                .put("reason", f.reason(texts, form.units()))
                .put("advice", f.advice(texts, form.units())));
        if (outlook != null) {
            put(root.putObject("outlook"), outlook);
        }
        return JsonMapper.builder().build().writeValueAsString(root) + "\n";
    }

    private static void put(ObjectNode node, Outlook o) {
        node.put("tanks", o.tanks()).put("days", o.days()).put("fish", o.fish());
        spread(node, "ready_day", o.ready());
        ArrayNode chance = node.putArray("ready_by_day");
        o.readyBy().forEach(chance::add);
        spread(node, "ammonia_peak_mg_n_per_l", o.ammoniaPeak());
        spread(node, "ammonia_peak_day", o.ammoniaPeakDay());
        spread(node, "nitrite_peak_mg_n_per_l", o.nitritePeak());
        spread(node, "nitrite_peak_day", o.nitritePeakDay());
        node.put("ration_g_per_day", o.rationG());
        spread(node, "carries_g_per_day", o.carriedG());
        spread(node, "carries_fish", o.carriedFish());
        spread(node, "water_volumes", o.volumes());
        spread(node, "water_l", o.litres());
        spread(node, "salt_g", o.saltG());
        spread(node, "bicarbonate_g", o.bicarbonateG());
        spread(node, "ammonium_chloride_g", o.ammoniumG());
        spread(node, "thiosulfate_g", o.neutraliserG());
        spread(node, "strips", o.strips());
        spread(node, "chloride_strips", o.chlorideStrips());
        spread(node, "work_days", o.workDays());
        ArrayNode work = node.putArray("work_share_by_day");
        o.workShare().forEach(work::add);
        spread(node, "deaths_fish", o.deaths());
        Outlook.Second second = o.second();
        if (second != null) {
            ObjectNode other = node.putObject("second");
            spread(other, "ready_after_days", second.ready());
            other.put("fish_mass_g", second.massG());
            other.put("latest_start_day", second.latestStart());
        }
    }

    /** What never comes is null. */
    private static void spread(ObjectNode node, String key, Spread spread) {
        ArrayNode band = node.putArray(key);
        for (double value : new double[] {spread.low(), spread.middle(), spread.high()}) {
            if (Double.isInfinite(value)) {
                band.addNull();
            } else {
                band.add(value);
            }
        }
    }
}
