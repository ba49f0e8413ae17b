/*
 * Light, averaged over whole cycles of the mains. Pure.
 *
 * Lamps flicker with twice the frequency of the mains, and dimmers with every multiple of it. A mean over 100 ms takes in 5
 * whole cycles of 50 Hz and 6 of 60 Hz, so that it removes the flicker of both and all its harmonics. (A mean over a time T
 * leaves |sin(pi f T) / (pi f T)| of a frequency f: nothing where f T is a whole number.) With a resonator that is 0.5 % off
 * instead of a crystal, 0.5 % of the flicker is left. The mean moves on with every sample: lines may come faster than it is
 * long; it is 50 ms late.
 */
#ifndef LIGHT_H
#define LIGHT_H

#include <stdint.h>

#define LIGHT_SAMPLES 100 /* one each millisecond */

struct light {
    uint16_t samples[LIGHT_SAMPLES];
    uint32_t sum;
    uint8_t next;
};

void light_init(struct light *light);

/* Takes the next sample: 10 bits, one each millisecond. */
void light_add(struct light *light, uint16_t counts);

/* The mean in hundredths of a count: with a hundred samples that is their sum. Before those are there it is too small. */
uint32_t light_hundredths(const struct light *light);

#endif
