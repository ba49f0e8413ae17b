#include "sensors.h"

#include <math.h>

static const double PI = 3.14159265358979323846;

double echo_us(double mm)
{
    double m_per_s = 331.3 * sqrt(1 + 20 / 273.15);
    return 2 * mm * 1000 / m_per_s;
}

double infrared_v(double mm)
{
    /* marked points of the figure, output over inverse distance: straight lines between them */
    static const double cm[] = {80, 40, 25, 15, 10, 7};
    static const double volts[] = {0.396, 0.733, 1.08, 1.641, 2.327, 2.978};
    const int last = 5;
    if (mm <= 0 || mm > 10 * cm[0]) {
        return 0.25;
    }
    double inverse = 10 / mm;
    int i = 0;
    while (i < last - 1 && inverse > 1 / cm[i + 1]) {
        i++;
    }
    double share01 = (inverse - 1 / cm[i]) / (1 / cm[i + 1] - 1 / cm[i]);
    return volts[i] + fmin(share01, 1) * (volts[i + 1] - volts[i]);
}

double light_v(double lux)
{
    /* R = R10 (E / 10 lux)^-gamma; the part GL5528 has 8..20 kOhm at 10 lux and a gamma of 0.6..0.7 by its data sheets */
    double ohm = 14000 * pow(lux / 10, -0.65);
    return SUPPLY_V * 10000 / (ohm + 10000);
}

/* Marsaglia's xorshift (Journal of Statistical Software 8(14), 2003), 64 bits. */
static double uniform01(uint64_t *state)
{
    *state ^= *state << 13;
    *state ^= *state >> 7;
    *state ^= *state << 17;
    return ((double)(*state >> 11) + 0.5) / 9007199254740992.0;
}

/* Box and Muller's method. */
double noise(uint64_t *state)
{
    double radius = sqrt(-2 * log(uniform01(state)));
    return radius * cos(2 * PI * uniform01(state));
}
