package startwater.rehearse;

import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;

/** The shelf of a drill from that of the form. What is not told is taken as there in plenty, for the tank's size. */
final class OwnShelf {
    private static final int STRIPS = 100;
    private static final int CHLORIDE_STRIPS = 20;
    /** Plenty for a start-up, g/L (reckoned from what the standing rules use in the shipped drills). */
    private static final double SALT_G_PER_L = 2;

    private static final double BICARBONATE_G_PER_L = 2;
    private static final double AMMONIUM_G_PER_L = 0.4;
    private static final double NEUTRALISER_G_PER_L = 0.1;
    private static final double LARGEST_G = 1_000_000;

    private OwnShelf() {}

    static Scenario.Shelf of(OwnSystem own, double volumeL) {
        OwnSystem.Shelf shelf = own.shelf();
        Integer strips = shelf.strips();
        Integer chloride = shelf.chlorideStrips();
        return new Scenario.Shelf(
                grams(shelf.saltG(), SALT_G_PER_L * volumeL),
                grams(shelf.bicarbonateG(), BICARBONATE_G_PER_L * volumeL),
                0,
                own.starting() == Starting.FISH_IN ? 0 : grams(shelf.ammoniumG(), AMMONIUM_G_PER_L * volumeL),
                grams(shelf.neutraliserG(), NEUTRALISER_G_PER_L * volumeL),
                strips == null ? STRIPS : strips,
                chloride == null ? CHLORIDE_STRIPS : chloride,
                shelf.oxygenMeter(),
                shelf.phMeter(),
                0,
                own.air().spare() ? Facts.of("air.spare").value() : 0);
    }

    private static double grams(@Nullable Double told, double otherwise) {
        return Math.min(LARGEST_G, told == null ? OwnScenario.rounded(otherwise) : told);
    }
}
