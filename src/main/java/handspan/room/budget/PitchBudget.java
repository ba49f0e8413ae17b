package handspan.room.budget;

import handspan.instrument.sensor.SensorKind;
import handspan.number.fit.EffectiveFreedom;
import handspan.number.fit.StudentT;
import handspan.number.units.Figures;
import handspan.room.FitQuality;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What can be promised of the pitch at a place, after the GUM (JCGM 100:2008): each term a standard uncertainty in
 * cents, summed in squares (its equation 10 for independent inputs). Jitter is no part of it; it is told beside it.
 *
 * @param terms what is uncertain, in cents each
 * @param standardCents root of the sum of squares
 */
public record PitchBudget(List<Term> terms, double standardCents) {
    /**
     * How still a person holds a hand over some seconds: 1 mm rms between 0.05 and 0.5 Hz (assumed), of which the mean
     * over the two seconds of a hold keeps eight tenths. Slower than a hold lasts, so that no hold shows it.
     */
    public static final double HAND_MM = 0.8;

    /** The same over the four seconds of a hold by ruler. */
    public static final double HAND_BY_RULER_MM = 0.55;

    /** Smooth departure from a straight line over {@link #BEND_SPAN_MM}, mm, anything within as likely (assumed). */
    public static final double BEND_MM = 5;

    /** Reach over which a length sensor bends once, mm (assumed). */
    public static final double BEND_SPAN_MM = 600;

    /**
     * Spread of the infrared law's {@code a} from part to part, V: the data sheets give 0.25..0.55 V at the far end;
     * what a part's scale does not explain of it, 0.11 V either way, anything within as likely.
     */
    public static final double INFRARED_A_VOLTS = 0.11;

    /**
     * How far the law lies from the curve that the data sheet draws, V at most (found when it was fitted to its points
     * between 80 and 500 mm).
     */
    public static final double INFRARED_LAW_VOLTS = 0.008;

    /** And from one that was fitted to holds between 100 and 400 mm, mm rms (found on that curve). */
    public static final double INFRARED_FITTED_MM = 0.6;

    /** Of a half sine's curvature, what a zone in its middle sees on average. */
    private static final double MEAN_CURVATURE = 0.9;

    private static final double COVERAGE01 = 0.95;

    /**
     * One thing that is uncertain.
     *
     * @param name in words
     * @param cents standard uncertainty
     * @param freedom degrees of freedom of that figure, above 0; infinite where it is taken as known
     * @param assumed whether the figure is assumed rather than measured here
     */
    public record Term(String name, double cents, double freedom, boolean assumed) {}

    /** Copies the terms. */
    public PitchBudget {
        terms = List.copyOf(terms);
    }

    /**
     * The budget at a place.
     *
     * @param hand the pitch hand
     * @param place01 0 = near end, 1 = far end
     * @param centsPerMm of the pitch curve there
     */
    public static PitchBudget at(HandSetup hand, double place01, double centsPerMm) {
        List<Term> terms = new ArrayList<>();
        FitQuality fit = hand.fit();
        if (fit == null) {
            ends(hand, place01, terms);
            shape(hand, place01, terms);
        } else {
            terms.add(measured("fit to the holds", fit.uncertaintyMm(hand.zone().mm(place01)), fit.freedom()));
            if (!fit.spans(hand.zone())) {
                ends(hand, place01, terms);
            }
        }
        double driftMm = driftMm(hand.channel().kind());
        if (driftMm > 0) {
            double since = fit == null ? Math.hypot(Math.hypot(1 - place01, place01), 1) : 1;
            terms.add(assumed("drift of the sensor", since * driftMm));
        }
        double resolutionMm = resolutionMm(hand);
        if (resolutionMm > 0) {
            terms.add(measured("step of the sensor", resolutionMm, Double.POSITIVE_INFINITY));
        }
        return inCents(terms, centsPerMm);
    }

    private static void ends(HandSetup hand, double place01, List<Term> terms) {
        Zone zone = hand.zone();
        double endsMm = Math.hypot((1 - place01) * zone.nearUncertaintyMm(), place01 * zone.farUncertaintyMm());
        terms.add(measured("zone ends", endsMm, Double.POSITIVE_INFINITY));
        if (!hand.scaledTravel() || hand.response() instanceof Response.Triangulation) {
            terms.add(assumed("hand at the ends", Math.hypot(1 - place01, place01) * HAND_MM));
        }
    }

    /** What the sensor does between the ends, where no hold tells. */
    private static void shape(HandSetup hand, double place01, List<Term> terms) {
        Zone zone = hand.zone();
        if (hand.channel().kind().isLength()) {
            terms.add(assumed("bend of the sensor", bendMm(zone, place01)));
        }
        if (hand.response() instanceof Response.Triangulation law) {
            terms.add(assumed("curve of the infrared part", InfraredShape.uncertaintyMm(law, zone, place01)));
        }
    }

    /**
     * Standard deviation of what a bend of up to {@link #BEND_MM} leaves between two ends: a curvature of {@code B (pi
     * / S)^2} makes {@code 0.9 curvature (d - near) (far - d) / 2}; evenly spread, so over the root of 3 (JCGM
     * 100:2008, 4.3.7).
     */
    private static double bendMm(Zone zone, double place01) {
        double curvature = MEAN_CURVATURE * BEND_MM * Math.pow(Math.PI / BEND_SPAN_MM, 2);
        double fromChordMm = curvature / 2 * zone.lengthMm() * zone.lengthMm() * place01 * (1 - place01);
        return fromChordMm / Math.sqrt(3);
    }

    /**
     * What a sensor that counts in steps q can't see because noise of standard deviation s does not carry it from step
     * to step: at most {@code q / sqrt(12) exp(-2 (pi s / q)^2)}. Source: B. Widrow, I. Kollar, Quantization Noise,
     * Cambridge 2008, moments of a quantized normal value (from memory).
     */
    private static double resolutionMm(HandSetup hand) {
        double q = hand.stepMm();
        if (q <= 0) {
            return 0;
        }
        double variance = Math.max(0, hand.noiseMm() * hand.noiseMm() - q * q / 12);
        double resolution = q / Math.sqrt(12) * Math.exp(-2 * Math.PI * Math.PI * variance / (q * q));
        return resolution < NOTHING_MM ? 0 : resolution;
    }

    private static final double NOTHING_MM = 1e-3;

    /**
     * Slow drift of a sensor looking at a fixed thing, mm. Laser rangers: in an hour's recording of a fixed target
     * (200,244 readings) 3 s medians scattered 0.67 mm where white noise alone says 0.21, which leaves 0.64; its
     * autocorrelation of 0.07 makes it 0.57. No figure is known for the others.
     */
    public static double driftMm(SensorKind kind) {
        return kind == SensorKind.DISTANCE ? 0.6 : 0;
    }

    private static Term measured(String name, double mm, double freedom) {
        return new Term(name, mm, freedom, false);
    }

    private static Term assumed(String name, double mm) {
        return new Term(name, mm, Double.POSITIVE_INFINITY, true);
    }

    private static PitchBudget inCents(List<Term> inMm, double centsPerMm) {
        List<Term> terms = inMm.stream()
                .map(term -> new Term(term.name(), term.cents() * centsPerMm, term.freedom(), term.assumed()))
                .toList();
        double sum =
                terms.stream().mapToDouble(term -> term.cents() * term.cents()).sum();
        return new PitchBudget(terms, Math.sqrt(sum));
    }

    /** Effective degrees of freedom after Welch and Satterthwaite (JCGM 100:2008, G.4.1). */
    public double freedom() {
        return EffectiveFreedom.of(
                terms.stream().mapToDouble(Term::cents).toArray(),
                terms.stream().mapToDouble(Term::freedom).toArray());
    }

    /** Half-width of the interval that holds the truth with 95 %, cents: Student's t of {@link #freedom}. */
    public double expandedCents() {
        return StudentT.coverage(freedom(), COVERAGE01) * standardCents;
    }

    /** The largest term. */
    public Term largest() {
        return terms.stream().max(Comparator.comparingDouble(Term::cents)).orElseThrow();
    }

    /** In words: the interval and its largest part. */
    public String words() {
        return "within " + Figures.text(expandedCents(), 0) + " cents (95 %); mostly "
                + largest().name() + (largest().assumed() ? " (assumed)" : "");
    }
}
