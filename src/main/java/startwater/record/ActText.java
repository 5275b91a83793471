package startwater.record;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Prediction;
import startwater.strip.Pad;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Decisions and predictions as JSON. Names are in lower case, the unit stands in the field's name. */
final class ActText {
    private ActText() {}

    static ObjectNode of(Decision d) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("feed_share", d.feed())
                .put("change_share", d.change())
                .put("neutralise", d.neutralise())
                .put("salt_g", d.saltG())
                .put("bicarbonate_g", d.bicarbonateG())
                .put("soda_ash_g", d.sodaAshG())
                .put("ammonium_chloride_g", d.ammoniumChlorideG())
                .put("air", name(d.air()))
                .put("filter", name(d.filter()))
                .put("follow_up", name(d.helpers()))
                .put("pump", d.pump())
                .put("heater", d.heater())
                .put("stock_share", d.stock())
                .put("ripe_media_share", d.ripeMedia());
    }

    static Decision decision(JsonNode d) {
        return new Decision(
                Field.number(d, "feed_share"),
                Field.number(d, "change_share"),
                Field.flag(d, "neutralise"),
                Field.number(d, "salt_g"),
                Field.number(d, "bicarbonate_g"),
                Field.number(d, "soda_ash_g"),
                Field.number(d, "ammonium_chloride_g"),
                Field.name(d, "air", Decision.Air.class),
                Field.name(d, "filter", Decision.FilterCare.class),
                Field.name(d, "follow_up", Decision.FollowUp.class),
                Field.flag(d, "pump"),
                Field.flag(d, "heater"),
                Field.number(d, "stock_share"),
                Field.number(d, "ripe_media_share"));
    }

    static ObjectNode of(Prediction p) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("pad", name(p.pad()))
                .put("block", p.block())
                .put("sureness", name(p.sureness()));
    }

    static @Nullable Prediction prediction(@Nullable JsonNode p) {
        return p == null
                ? null
                : new Prediction(
                        Field.name(p, "pad", Pad.class),
                        Field.whole(p, "block"),
                        Field.name(p, "sureness", Prediction.Sureness.class));
    }

    static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
