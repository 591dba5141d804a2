package campcloth.comfort.model;

/** The two states of the body between which ISO 11079:2007 judges cold clothing. */
public enum ColdCriterion {
    /** IREQ minimal: cold, but the heat balance just holds. */
    MINIMAL {
        @Override
        public double skinC(double metabolicWm2) {
            return 33.34 - 0.0354 * metabolicWm2;
        }

        @Override
        double wettedness(double metabolicWm2) {
            return 0.06;
        }
    },
    /** IREQ neutral: neither cool nor warm. */
    NEUTRAL {
        @Override
        public double skinC(double metabolicWm2) {
            return 35.7 - 0.0285 * metabolicWm2;
        }

        @Override
        double wettedness(double metabolicWm2) {
            return 0.001 * metabolicWm2;
        }
    };

    /** Mean skin temperature t_sk, degrees Celsius. */
    public abstract double skinC(double metabolicWm2);

    /** Skin wettedness w_sk, share of the skin. */
    abstract double wettedness(double metabolicWm2);
}
