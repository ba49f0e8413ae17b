package handspan.number.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Univariate data sets with certified values. Source: NIST/ITL Statistical Reference Datasets, univariate summary
 * statistics, sets Michelso, Lottery and NumAcc1 to NumAcc3 (public domain).
 *
 * @param name of the set
 * @param mean certified
 * @param deviation certified sample standard deviation (denominator n - 1)
 * @param lagOne certified autocorrelation at lag 1
 * @param values in their order
 */
record NistSeries(String name, double mean, double deviation, double lagOne, List<Double> values) {
    static final NistSeries MICHELSO =
            new NistSeries("Michelso", 299.852400000000, 0.0790105478190518, 0.535199668621283, numbers("""
                    299.85 299.74 299.90 300.07 299.93 299.85 299.95 299.98 299.98 299.88 300.00 299.98
                    299.93 299.65 299.76 299.81 300.00 300.00 299.96 299.96 299.96 299.94 299.96 299.94
                    299.88 299.80 299.85 299.88 299.90 299.84 299.83 299.79 299.81 299.88 299.88 299.83
                    299.80 299.79 299.76 299.80 299.88 299.88 299.88 299.86 299.72 299.72 299.62 299.86
                    299.97 299.95 299.88 299.91 299.85 299.87 299.84 299.84 299.85 299.84 299.84 299.84
                    299.89 299.81 299.81 299.82 299.80 299.77 299.76 299.74 299.75 299.76 299.91 299.92
                    299.89 299.86 299.88 299.72 299.84 299.85 299.85 299.78 299.89 299.84 299.78 299.81
                    299.76 299.81 299.79 299.81 299.82 299.85 299.87 299.87 299.81 299.74 299.81 299.94
                    299.95 299.80 299.81 299.87
                    """));

    static final NistSeries LOTTERY =
            new NistSeries("Lottery", 518.958715596330, 291.699727470969, -0.120948622967393, numbers("""
                    162 671 933 414 788 730 817 33 536 875 670 236 473 167 877 980 316 950 456 92 517 557
                    956 954 104 178 794 278 147 773 437 435 502 610 582 780 689 562 964 791 28 97 848 281
                    858 538 660 972 671 613 867 448 738 966 139 636 847 659 754 243 122 455 195 968 793 59
                    730 361 574 522 97 762 431 158 429 414 22 629 788 999 187 215 810 782 47 34 108 986 25
                    644 829 630 315 567 919 331 207 412 242 607 668 944 749 168 864 442 533 805 372 63 458
                    777 416 340 436 140 919 350 510 572 905 900 85 389 473 758 444 169 625 692 140 897 672
                    288 312 860 724 226 884 508 976 741 476 417 831 15 318 432 241 114 799 955 833 358 935
                    146 630 830 440 642 356 373 271 715 367 393 190 669 8 861 108 795 269 590 326 866 64 523
                    862 840 219 382 998 4 628 305 747 247 34 747 729 645 856 974 24 568 24 694 608 480 410
                    729 947 293 53 930 223 203 677 227 62 455 387 318 562 242 428 968
                    """));

    static final NistSeries NUM_ACC_1 =
            new NistSeries("NumAcc1", 10_000_002, 1, -0.5, List.of(10_000_001.0, 10_000_003.0, 10_000_002.0));

    static final NistSeries NUM_ACC_2 = new NistSeries("NumAcc2", 1.2, 0.1, -0.999, alternating(1.2, 1.1, 1.3));

    static final NistSeries NUM_ACC_3 =
            new NistSeries("NumAcc3", 1_000_000.2, 0.1, -0.999, alternating(1_000_000.2, 1_000_000.1, 1_000_000.3));

    /** One value, then 500 pairs: so the two sets are written. */
    private static List<Double> alternating(double first, double low, double high) {
        List<Double> values = new ArrayList<>(List.of(first));
        for (int pair = 0; pair < 500; pair++) {
            values.add(low);
            values.add(high);
        }
        return values;
    }

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.strip().split("\\s+", -1))
                .map(Double::valueOf)
                .toList();
    }

    double[] array() {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public String toString() {
        return name;
    }
}
