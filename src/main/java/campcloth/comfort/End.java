package campcloth.comfort;

import campcloth.comfort.Reading.Value;

/** Which end of the intervals of all cloths a model is run at. */
enum End {
    OPEN,
    MIDDLE,
    CLOSE;

    Sheet of(Sheets sheets) {
        return switch (this) {
            case OPEN -> sheets.open();
            case MIDDLE -> sheets.middle();
            case CLOSE -> sheets.close();
        };
    }

    double of(Value insulation) {
        return switch (this) {
            case OPEN -> insulation.low();
            case MIDDLE -> insulation.value();
            case CLOSE -> insulation.high();
        };
    }
}
