package campcloth.comfort.model;

/**
 * Share of the radiating body that a beam meets, f_p, by the height of the sun and by how far it stands off the front of the body:
 * table of Fanger 1970 as ASHRAE 55 appendix C carries it (read second-hand in several copies), straight lines between.
 */
final class ProjectedArea {

    private static final double STEP = 15;

    /** A row for each 15 degrees off the front, a column for each 15 degrees of height. */
    private static final double[][] SEATED = {
        {0.290, 0.324, 0.305, 0.303, 0.262, 0.224, 0.177},
        {0.292, 0.328, 0.294, 0.288, 0.268, 0.227, 0.177},
        {0.288, 0.332, 0.298, 0.290, 0.264, 0.222, 0.177},
        {0.274, 0.326, 0.294, 0.289, 0.252, 0.214, 0.177},
        {0.254, 0.308, 0.280, 0.276, 0.241, 0.202, 0.177},
        {0.230, 0.282, 0.262, 0.260, 0.233, 0.193, 0.177},
        {0.216, 0.260, 0.248, 0.244, 0.220, 0.186, 0.177},
        {0.234, 0.258, 0.236, 0.227, 0.208, 0.180, 0.177},
        {0.262, 0.260, 0.224, 0.208, 0.196, 0.176, 0.177},
        {0.280, 0.260, 0.210, 0.192, 0.184, 0.170, 0.177},
        {0.298, 0.256, 0.194, 0.174, 0.168, 0.168, 0.177},
        {0.306, 0.250, 0.180, 0.156, 0.156, 0.166, 0.177},
        {0.300, 0.240, 0.168, 0.152, 0.152, 0.164, 0.177},
    };

    private static final double[][] STANDING = {
        {0.350, 0.350, 0.314, 0.258, 0.206, 0.144, 0.082},
        {0.342, 0.342, 0.310, 0.252, 0.200, 0.140, 0.082},
        {0.330, 0.330, 0.300, 0.244, 0.190, 0.132, 0.082},
        {0.310, 0.310, 0.275, 0.228, 0.175, 0.124, 0.082},
        {0.283, 0.283, 0.251, 0.208, 0.160, 0.114, 0.082},
        {0.252, 0.252, 0.228, 0.188, 0.150, 0.108, 0.082},
        {0.230, 0.230, 0.214, 0.180, 0.148, 0.108, 0.082},
        {0.242, 0.242, 0.222, 0.180, 0.153, 0.112, 0.082},
        {0.274, 0.274, 0.245, 0.203, 0.165, 0.116, 0.082},
        {0.304, 0.304, 0.270, 0.220, 0.174, 0.121, 0.082},
        {0.328, 0.328, 0.290, 0.234, 0.183, 0.125, 0.082},
        {0.344, 0.344, 0.304, 0.244, 0.190, 0.128, 0.082},
        {0.347, 0.347, 0.308, 0.246, 0.191, 0.128, 0.082},
    };

    private ProjectedArea() {}

    /** With the sun in front. */
    static double facing(double altitudeDegrees, boolean seated) {
        return along(table(seated)[0], altitudeDegrees);
    }

    /**
     * @param altitudeDegrees 0..90
     * @param sharpDegrees angle between the front of the body and the sun as seen from above, 0..180
     */
    static double at(double altitudeDegrees, double sharpDegrees, boolean seated) {
        double[][] rows = table(seated);
        double[] column = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            column[i] = along(rows[i], altitudeDegrees);
        }
        return along(column, sharpDegrees);
    }

    /** The mean of a body that turns about. */
    static double turning(double altitudeDegrees, boolean seated) {
        double[][] rows = table(seated);
        double sum = 0;
        for (int i = 0; i < rows.length; i++) {
            boolean end = i == 0 || i == rows.length - 1;
            sum += (end ? 0.5 : 1) * along(rows[i], altitudeDegrees);
        }
        return sum / (rows.length - 1);
    }

    private static double[][] table(boolean seated) {
        return seated ? SEATED : STANDING;
    }

    private static double along(double[] values, double degrees) {
        double place = degrees / STEP;
        int below = Math.min(values.length - 2, (int) place);
        return values[below] + (place - below) * (values[below + 1] - values[below]);
    }
}
