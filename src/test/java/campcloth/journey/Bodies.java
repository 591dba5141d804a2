package campcloth.journey;

/** Requests as a maker sends them, for the Wendlow river camp: an invented event. */
final class Bodies {

    static final String EVENT = """
            {"name": "Wendlow river camp", "season": "SUMMER", "spells": [
              {"name": "noon", "hours": 5, "airC": 27, "humidityPercent": 50, "windMs": 1.5, "sun": "FULL",
               "activity": "WALKING"},
              {"name": "fireside", "hours": 3, "airC": 12, "humidityPercent": 75, "windMs": 1.0, "sun": "NONE",
               "activity": "SEATED", "fire": {"role": "SEATED", "distanceM": 2.0}}],
             "rules": [{"authority": "EVENT",
               "statement": "No more than a third synthetic within three metres of open fire",
               "maxMeltablePercent": 33, "withinM": 3.0}]}
            """;

    static final String EVENT_WITH_EVERY_CONDITION = """
            {"name": "Wendlow river camp", "season": "SUMMER", "spells": [
              {"name": "fireside", "hours": 3, "airC": 12, "humidityPercent": 75, "windMs": 1.0, "sun": "NONE",
               "activity": "SEATED", "fire": {"role": "SEATED", "distanceM": 2.0, "fireKw": 50,
               "kind": "CAMPFIRE"}, "startsAt": "21:30", "cloudPercent": 25, "shelter": "OPEN", "wet": "DAMP"}],
             "startsOn": "2027-07-16", "endsOn": "2027-07-18", "latitudeDeg": 51.5,
             "rules": [{"authority": "VENUE", "statement": "Wool or linen at the fire, close sleeves",
               "maxMeltablePercent": 5.0, "forbiddenFibres": ["acrylic"], "allowedFibres": ["flax", "wool"],
               "minWeightGsm": 250.0, "plainSurfaceOnly": true, "closeFitOnly": true, "keepAtLeastM": 1.5,
               "requiredTreatment": "treatment that lasts", "requiredCertificate": "test report",
               "askAbout": "whether the marshal has seen it", "withinM": 3.0, "roles": ["COOKING", "CARRYING"],
               "source": "Wendlow camp rules, page 2", "issuedOn": "2027-02-01", "edition": "3",
               "validFrom": "2027-03-01", "validUntil": "2027-12-31"}]}
            """;

    /** Every measurement is in it. */
    static final String SWATCH = """
            {"measuredOn": "2024-05-04", "note": "Wendlow sewing table, letter scale and steel ruler",
             "conditioned": false,
             "weighed": {"pieces": [{"lengthCm": 10.0, "widthCm": 10.0, "massG": 1.86}, {"lengthCm": 10.0, "widthCm": 10.0, "massG": 1.91},
               {"lengthCm": 10.0, "widthCm": 10.0, "massG": 1.88}], "scaleStepG": 0.01, "rulerStepMm": 1.0},
             "washed": {"warp": [{"beforeCm": 50.0, "afterCm": [47.3]}], "weft": [{"beforeCm": 50.0, "afterCm": [48.9]}],
               "specimenLengthCm": 60.0, "specimenWidthCm": 60.0, "rulerStepMm": 1.0,
               "washing": {"temperatureC": 40.0, "method": "MACHINE", "drying": "LINE"}},
             "stack": {"stackMm": 4.2, "layers": 10, "massG": 200.0, "areaCm2": 20.0, "readingStepMm": 0.1},
             "wind": {"reference": {"value": 400.0, "low": 350.0, "high": 450.0, "basis": "DECLARED", "source": "told by the weaver"},
               "referenceName": "Plain linen of known air permeability", "referenceSeconds": [20.5, 21.0, 20.2], "seconds": [31.0, 30.4, 31.5], "massG": 500.0, "areaCm2": 400.0},
             "drip": {"seconds": [3.0, 4.5, 2.5, 6.0, 3.5]}}
            """;

    static final String ADVICE = """
            {"event": %s, "garment": {"design": "tunic", "nextToSkin": true, "wearer": {"chestCm": 98}},
             "cloths": {"ids": []}, "limit": 20}
            """.formatted(EVENT);

    private static final String OUTFIT = """
            [{"kind": "SHIRT", "insulationClo": 0.2}, {"kind": "CLOAK", "clothId": "linen-plain-185"},
             {"kind": "LINING", "cloth": {"name": "Old curtain", "blend": [{"fibre": "cotton", "percent": 100}],
              "weightGsm": 140}}]
            """;

    static final String ADVICE_WITH_AN_OUTFIT = """
            {"event": %s, "garment": {"design": "tunic", "nextToSkin": false, "use": "ORDINARY",
              "wearer": {"chestCm": 98}, "outfit": %s}, "cloths": {"ids": ["linen-plain-185"]}, "limit": 20}
            """.formatted(EVENT_WITH_EVERY_CONDITION, OUTFIT);

    static final String COURSE = """
            {"event": {"name": "Wendlow river camp", "season": "SUMMER", "latitudeDeg": 51.5, "spells": [
              {"name": "noon", "hours": 5, "airC": 27, "humidityPercent": 50, "windMs": 1.5, "sun": "FULL",
               "activity": "WALKING", "startsAt": "10:30", "cloudPercent": 25, "shelter": "OPEN"}]},
             "garment": {"design": "tunic", "nextToSkin": true, "wearer": {"chestCm": 98}},
             "cloth": {"name": "Remnant from the bin", "blend": [{"fibre": "flax", "percent": 100}], "weightGsm": 210}}
            """;

    static final String CLOTH = """
            {"name": "Remnant from the bin", "blend": [{"fibre": "flax", "percent": 70.0},
              {"fibre": "polyester", "percent": 30.0}], "weave": "PLAIN", "surface": "PLAIN", "finish": "NONE",
             "nap": false, "stretch": false, "weightGsm": 210, "widthCm": 140, "shrinkWarpPercent": 5,
             "note": "smells of lavender"}
            """;

    static final String CUTTING_PLAN = """
            {"cloth": {"widthCm": 140, "shrinkWarpPercent": 6, "shrinkWeftPercent": 4, "weightGsm": 200, "nap": false,
                       "prewash": true, "pricePerMetre": 14.5, "currency": "EUR", "selvedgeCm": 1},
             "garments": [{"design": "tunic", "count": 1,
               "wearer": {"finishedChestCm": 126, "lengthCm": 95, "sleeveLengthCm": 53, "sleeveTopWidthCm": 40,
                          "cuffWidthCm": 30, "neckDiameterCm": 15},
               "options": {"sideSplits": false}}],
             "remnantLengthCm": null, "fold": "ANY"}
            """;

    static final String CUTTING_PLAN_WITH_LENGTHS = CUTTING_PLAN.strip().replaceFirst("}$", "") + """
            , "lengthsAtHand": [{"lengthCm": 80, "widthCm": 90}], "repeatLengthCm": 8, "repeatWidthCm": 6,
             "sewnBy": "HAND", "shopStepCm": 5}
            """;

    static final String CLOTH_COMPARISON = """
            {"cloths": [{"clothId": "linen-plain-185", "prewash": true, "selvedgeCm": 1},
              {"cloth": {"name": "Wide linen", "widthCm": 280, "weightGsm": 200, "pricePerMetre": 31, "currency": "EUR"}}],
             "garments": [{"design": "tunic", "count": 1, "wearer": {"finishedChestCm": 126},
               "options": {"sideSplits": false}}],
             "fold": "ANY", "shopStepCm": 10}
            """;

    static final String SIDE_BY_SIDE = """
            {"ids": ["linen-plain-185", "polycotton-65-35-200"], "cloths": [%s],
             "fire": {"role": "SEATED", "distanceM": 2.0, "fireKw": 100, "kind": "LARGE_FIRE", "fit": "CLOSE",
              "layer": "OUTER"}}
            """.formatted(CLOTH);

    static final String LABEL = "{\"text\": \"70% linen 30% polyester\"}";

    static final String BURN_TEST = """
            {"threads": [
              {"thread": "warp", "observations": {"approach": "stays", "flame": "steady", "molten": "none",
               "removed": "burns-on", "ember": "afterglow", "smoke": "pale", "odour": "paper", "residue": "soft-ash"}},
              {"thread": "weft", "observations": {"odour": "celery", "residue": "hard-bead"}}]}
            """;

    static final String FIRE = """
            {"blend": [{"fibre": "polyester", "percent": 65}, {"fibre": "cotton", "percent": 35}], "weightGsm": 120,
             "surface": "PLAIN", "fit": "LOOSE", "layer": "OUTER", "role": "SEATED", "distanceM": 2.0, "fireKw": 100,
             "weave": "PLAIN", "finish": "NONE"}
            """;

    static final String FIRE_IN_AN_OUTFIT = """
            {"blend": [{"fibre": "polyester", "percent": 65}, {"fibre": "cotton", "percent": 35}], "weightGsm": 120,
             "surface": "PLAIN", "fit": "LOOSE", "layer": "OUTER", "role": "SEATED", "distanceM": 2.0, "fireKw": 100,
             "kind": "LARGE_FIRE", "weave": "PLAIN", "finish": "NONE", "use": "ORDINARY",
             "flameTreatment": "DECLARED", "outfit": %s}
            """.formatted(OUTFIT);

    static final String LAYOUT = """
            {"widthCm": 140, "pieces": [
              {"name": "front", "outlineCm": [[0, 0], [70, 0], [70, 95], [0, 95]], "count": 2, "turnable": true,
               "mirrorable": false},
              {"name": "gore", "outlineCm": [[0, 0], [30, 0], [15, 60]], "count": 4, "turnable": true,
               "mirrorable": false}],
             "seconds": 0.05, "gapCm": 0, "seed": 7}
            """;

    static final String COMFORT = """
            {"airC": 2, "radiantC": 3, "windMs": 2, "humidityPercent": 70, "met": 2.0, "clo": 2.0, "walkingMs": 0.5,
             "airPermeability": 100, "pmvAirSpeedMs": 0.2}
            """;

    private Bodies() {}
}
