/*
 * What sensors make of distance and light, written from data sheets and textbooks, not from the program that reads them.
 */
#ifndef SENSORS_H
#define SENSORS_H

#include <stdint.h>

/* The supply and full scale of the converter. */
#define SUPPLY_V 5.0

/*
 * How long the echo line is high: there and back at the speed of sound in dry air of 20 degrees C, 343.2 m/s
 * (331.3 m/s * sqrt(1 + 20 / 273.15), the ideal gas).
 */
double echo_us(double mm);

/* What the module makes of no echo at all (data sheet of the HC-SR04 module). */
#define NO_ECHO_US 38000.0

/* From the end of the trigger to the beginning of the echo line's high level, about (common practice). */
#define BURST_US 450.0

/* Output of the 10-80 cm part over white paper (data sheet E4-A00201EN, Fig. 2); out of its range 0.25 V. */
double infrared_v(double mm);

/* It measures anew each 38.3 ms (same data sheet) and its supply dips for a millisecond then, which reads as "nearer". */
#define INFRARED_CYCLE_S 0.0383
#define INFRARED_DIP_S 0.001
#define INFRARED_DIP_V 0.3

/* A photoresistor from the supply and 10 kOhm to ground. */
double light_v(double lux);

/* Normal noise of a seeded generator, mean 0 and standard deviation 1. */
double noise(uint64_t *state);

#endif
