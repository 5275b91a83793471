package startwater.content;

import startwater.biofilter.Nitrification;
import startwater.quantity.OutOfRangeException;
import startwater.water.OxygenSaturation;
import startwater.water.UnionisedAmmonia;

/** Which range a play has left, in the terms of an author. */
enum LeftRange {
    TEMPERATURE(Complaint.LEAVES_TEMPERATURE),
    SALT(Complaint.LEAVES_SALT),
    PH(Complaint.LEAVES_PH),
    MASS(Complaint.LEAVES_MASS),
    /** Any other: said with the words of the equation. */
    OTHER(Complaint.LEAVES_RANGE);

    private final Complaint complaint;

    LeftRange(Complaint complaint) {
        this.complaint = complaint;
    }

    static LeftRange of(OutOfRangeException left) {
        String quantity = left.quantity();
        if (quantity.equals(OxygenSaturation.TEMPERATURE_C.quantity())) {
            return TEMPERATURE;
        }
        if (quantity.equals(UnionisedAmmonia.SALINITY_G_PER_KG.quantity())) {
            return SALT;
        }
        if (quantity.equals(Nitrification.PH.quantity())) {
            return PH;
        }
        return quantity.equals("body mass in g") ? MASS : OTHER;
    }

    Complaint complaint() {
        return complaint;
    }

    /** What its sentence needs. */
    Object[] values(OutOfRangeException left, double day, String policy) {
        Object[] common = {
            "day", StrictMath.rint(day * 10) / 10,
            "value", left.value(),
            "low", left.low(),
            "high", left.high(),
            "policy", policy,
            "equation", left.equation(),
            "quantity", left.quantity()
        };
        return java.util.stream.IntStream.range(0, common.length)
                .filter(i -> complaint.placeholders().contains(common[i & ~1]))
                .mapToObj(i -> common[i])
                .toArray();
    }
}
