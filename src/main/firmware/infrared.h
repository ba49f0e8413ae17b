/*
 * The infrared sensor: the middle one of the latest five samples. Pure.
 *
 * Such a sensor draws its current in bursts, and what that does to the supply is read as "nearer" for a sample or two: the
 * median leaves it out, a mean would carry it along. Five samples, a millisecond apart, are a tenth of the sensor's own
 * cycle (38.3 ms, data sheet E4-A00201EN), so that nothing of its movement is lost.
 */
#ifndef INFRARED_H
#define INFRARED_H

#include <stdint.h>

#define INFRARED_SAMPLES 5

struct infrared {
    uint16_t samples[INFRARED_SAMPLES];
    uint8_t next;
};

void infrared_init(struct infrared *infrared);

/* Takes the next sample, one each millisecond. */
void infrared_add(struct infrared *infrared, uint16_t counts);

/* The middle one of the latest five. */
uint16_t infrared_counts(const struct infrared *infrared);

#endif
