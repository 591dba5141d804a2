package campcloth.fibre;

import campcloth.figure.Fault;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** A small table of fibres with plausible figures, so that tests do not hang on the catalogue's. */
public final class TestFibres {

    private static final String TABLE = """
            key,name,family,agreedAllowancePercent,densityGCm3,regainPercent,softensC,meltsC,decomposesC,oxygenIndexPercent,diameterUm,modulusGPa,inTheFlame
            cotton,cotton,CELLULOSIC,8.5 TYPICAL test,1.53 (1.52..1.54) TYPICAL test,8 (7..8.5) TYPICAL test,,,350 TYPICAL test,18.4 TYPICAL test,14.5 (12..20) TYPICAL test,7 TYPICAL test,flames
            flax,flax,CELLULOSIC,12 TYPICAL test,1.48 (1.45..1.5) TYPICAL test,9 (7..10) TYPICAL test,,,340 TYPICAL test,18.5 TYPICAL test,17 (12..20) TYPICAL test,50 TYPICAL test,flames
            hemp,hemp,CELLULOSIC,12 TYPICAL test,1.48 (1.46..1.5) TYPICAL test,9 (8..11) TYPICAL test,,,340 TYPICAL test,18.5 TYPICAL test,20 (15..30) TYPICAL test,45 TYPICAL test,flames
            jute,jute,CELLULOSIC,17 TYPICAL test,1.46 (1.44..1.5) TYPICAL test,12 TYPICAL test,,,330 TYPICAL test,20.5 TYPICAL test,20 (15..40) TYPICAL test,25 TYPICAL test,smoulders
            viscose,viscose,CELLULOSIC,13 TYPICAL test,1.51 (1.49..1.52) TYPICAL test,13 (12..14) TYPICAL test,,,350 TYPICAL test,18.9 TYPICAL test,13 (10..18) TYPICAL test,8 TYPICAL test,flames fast
            lyocell,lyocell,CELLULOSIC,13 TYPICAL test,1.51 (1.5..1.52) TYPICAL test,12 (11..13) TYPICAL test,,,350 TYPICAL test,18.9 TYPICAL test,,,flames fast
            wool,wool,PROTEIN,17 TYPICAL test,1.31 (1.3..1.32) TYPICAL test,15 (14..17) TYPICAL test,,,245 TYPICAL test,25 TYPICAL test,24 (17..36) TYPICAL test,3.5 TYPICAL test,chars
            cashmere,cashmere,PROTEIN,17 TYPICAL test,1.31 TYPICAL test,15 TYPICAL test,,,245 TYPICAL test,25 TYPICAL test,16 (14..19) TYPICAL test,3.5 TYPICAL test,chars
            mohair,mohair,PROTEIN,17 TYPICAL test,1.31 TYPICAL test,14 TYPICAL test,,,245 TYPICAL test,25 TYPICAL test,30 (23..40) TYPICAL test,3.5 TYPICAL test,chars
            silk,silk,PROTEIN,11 TYPICAL test,1.3 (1.25..1.34) TYPICAL test,10 TYPICAL test,,,170 TYPICAL test,23 TYPICAL test,12 (10..13) TYPICAL test,10 TYPICAL test,chars slowly
            polyester,polyester,MELTABLE,1.5 TYPICAL test,1.38 TYPICAL test,0.4 TYPICAL test,235 TYPICAL test,255 TYPICAL test,430 TYPICAL test,21 TYPICAL test,14 (10..18) TYPICAL test,9 TYPICAL test,"melts, drips"
            polyamide,polyamide,MELTABLE,6.25 TYPICAL test,1.14 TYPICAL test,4.2 TYPICAL test,170 TYPICAL test,218 TYPICAL test,430 TYPICAL test,20.5 TYPICAL test,15 (10..20) TYPICAL test,3 TYPICAL test,"melts, drips"
            acrylic,acrylic,MELTABLE,2 TYPICAL test,1.18 TYPICAL test,1.5 TYPICAL test,215 TYPICAL test,,290 TYPICAL test,18.2 TYPICAL test,15 (11..18) TYPICAL test,5 TYPICAL test,burns hot
            acetate,acetate,MELTABLE,9 TYPICAL test,1.31 TYPICAL test,6.5 TYPICAL test,180 TYPICAL test,245 TYPICAL test,300 TYPICAL test,18.4 TYPICAL test,16 (12..22) TYPICAL test,4 TYPICAL test,"melts, drips"
            elastane,elastane,MELTABLE,1.5 TYPICAL test,1.2 TYPICAL test,1.1 TYPICAL test,172 TYPICAL test,250 TYPICAL test,270 TYPICAL test,19 TYPICAL test,,,melts
            polypropylene,polypropylene,MELTABLE,2 TYPICAL test,0.91 TYPICAL test,0 TYPICAL test,145 TYPICAL test,168 TYPICAL test,,18.6 TYPICAL test,17 (12..25) TYPICAL test,5 TYPICAL test,"melts, drips"
            modacrylic,modacrylic,MELTABLE,2 TYPICAL test,1.35 TYPICAL test,2 TYPICAL test,160 TYPICAL test,,250 TYPICAL test,29 TYPICAL test,,,goes out
            aramid,aramid,FLAME_RESISTANT,8 TYPICAL test,1.38 TYPICAL test,5 TYPICAL test,,,380 TYPICAL test,29 TYPICAL test,12 TYPICAL test,10 TYPICAL test,chars
            glass,glass,MINERAL,2 TYPICAL test,2.55 TYPICAL test,0 TYPICAL test,,,,,9 TYPICAL test,70 TYPICAL test,glows
            other,other fibres,UNNAMED,,1.38 (0.9..1.55) TYPICAL test,5 (0..16) TYPICAL test,,,,,,,unknown
            unknown,unknown,UNNAMED,,1.38 (0.9..1.55) TYPICAL test,5 (0..16) TYPICAL test,,,,,,,unknown
            """;

    private static final Fibres FIBRES = read();

    private TestFibres() {}

    /** The whole table. */
    public static Fibres table() {
        return FIBRES;
    }

    /** The fibre of that key. */
    public static Fibre fibre(String key) {
        return FIBRES.require(key);
    }

    /** A blend written as {@code flax 70; polyester 30}. */
    public static Blend blend(String text) {
        return FIBRES.blend(text);
    }

    private static Fibres read() {
        List<Fault> faults = new ArrayList<>();
        try {
            Fibres fibres = Fibres.read(new StringReader(TABLE), faults);
            if (!faults.isEmpty()) {
                throw new IllegalStateException(faults.toString());
            }
            return fibres;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
