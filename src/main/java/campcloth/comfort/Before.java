package campcloth.comfort;

import campcloth.comfort.model.TwoNode;

/** How the wearers come out of what was before a stretch. */
sealed interface Before {

    /** Both wearers at the start of a stretch. */
    Pair start(Surroundings around, TwoNode little, TwoNode much);

    /** Sweat in the clothing, g per m2 of the body. */
    double waterGM2();

    /** Rested and dry: at the begin, after sleep, and where nothing is known of what was before. */
    record Rested() implements Before {
        @Override
        public Pair start(Surroundings around, TwoNode little, TwoNode much) {
            return new Pair(Wearer.neutral(little), Wearer.neutral(much), around.lowMet(), around.highMet());
        }

        @Override
        public double waterGM2() {
            return 0;
        }
    }

    /** Out of the cold in too little clothing, where the body itself could not be followed. */
    record Chilled(double skinC, double waterGM2) implements Before {
        @Override
        public Pair start(Surroundings around, TwoNode little, TwoNode much) {
            return new Pair(
                    Wearer.chilled(little, skinC, waterGM2),
                    Wearer.chilled(much, skinC, waterGM2),
                    around.lowMet(),
                    around.highMet());
        }
    }

    /** One who works little and one who works much, at the rates given, met. */
    record Pair(Wearer little, Wearer much, double lowMet, double highMet) implements Before {
        @Override
        public Pair start(Surroundings around, TwoNode littleModel, TwoNode muchModel) {
            boolean same = lowMet == around.lowMet() && highMet == around.highMet();
            return new Pair(
                    (same ? little : little.asWetAs(much)).entering(littleModel),
                    much.entering(muchModel),
                    around.lowMet(),
                    around.highMet());
        }

        @Override
        public double waterGM2() {
            return much.waterGM2();
        }

        Pair minuteLater(TwoNode littleModel, TwoNode muchModel) {
            return new Pair(little.minuteLater(littleModel), much.minuteLater(muchModel), lowMet, highMet);
        }

        boolean stands(Pair before) {
            return little.stands(before.little) && much.stands(before.much);
        }
    }
}
