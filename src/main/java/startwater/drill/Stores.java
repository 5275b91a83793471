package startwater.drill;

import startwater.strip.Pad;

/** What is left on the shelf of a drill that is played. No more is given than there is. */
final class Stores {
    private final Scenario.Shelf shelf;
    private int strips;
    private int chlorideStrips;
    private double saltG;
    private double bicarbonateG;
    private double ammoniumChlorideG;

    Stores(Scenario.Shelf shelf) {
        this.shelf = shelf;
        strips = shelf.strips();
        chlorideStrips = shelf.chlorideStrips();
        saltG = shelf.saltG();
        bicarbonateG = shelf.bicarbonateG();
        ammoniumChlorideG = shelf.ammoniumChlorideG();
    }

    int strips() {
        return strips;
    }

    int chlorideStrips() {
        return chlorideStrips;
    }

    double saltG() {
        return saltG;
    }

    double bicarbonateG() {
        return bicarbonateG;
    }

    double ammoniumChlorideG() {
        return ammoniumChlorideG;
    }

    /** How many strips that carry this pad were taken. */
    int taken(Pad pad) {
        return pad == Pad.CHLORIDE ? shelf.chlorideStrips() - chlorideStrips : shelf.strips() - strips;
    }

    /** Takes a strip that carries this pad. @return its number, from 0 @throws IllegalStateException when none is left */
    int take(Pad pad) {
        int number = taken(pad);
        if ((pad == Pad.CHLORIDE ? chlorideStrips : strips) <= 0) {
            throw new IllegalStateException("No strip is left for " + pad + ".");
        }
        if (pad == Pad.CHLORIDE) {
            chlorideStrips--;
        } else {
            strips--;
        }
        return number;
    }

    /** Gives what a decision asks for, as far as it is there, fish and ripe media apart. @return what was given */
    Decision give(Decision d) {
        Decision given = d.withSalt(Math.min(d.saltG(), saltG))
                .withBicarbonate(Math.min(d.bicarbonateG(), bicarbonateG))
                .withAmmoniumChloride(Math.min(d.ammoniumChlorideG(), ammoniumChlorideG));
        if (d.air() == Decision.Air.SPARE && !(shelf.spareAirKlaPerHour() > 0)) {
            given = given.withAir(Decision.Air.ON);
        }
        saltG -= given.saltG();
        bicarbonateG -= given.bicarbonateG();
        ammoniumChlorideG -= given.ammoniumChlorideG();
        return given;
    }
}
