/*
 * The board program on a simulated microcontroller, wired as WIRING.md says: an echo module on two pins, an infrared sensor
 * and a photoresistor on two channels of the converter, all driven by a scripted hand.
 */
#ifndef BOARD_SIM_H
#define BOARD_SIM_H

#include <simavr/sim_avr.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>

#include "hand.h"

#define BOARD_HZ 16000000u

struct board {
    avr_t *avr;
    avr_irq_t *echo_pin;
    avr_irq_t *converter;
    struct hand hand;
    uint64_t seed;
    double volts_noise;

    uint64_t power_cycle;  /* when power came, or the reset line was pulled */
    uint64_t trigger_cycle;
    uint64_t rise_cycle;
    double flight_us;
    double mm;
    uint64_t pings;
    double least_trigger_us, most_trigger_us;
    uint64_t slept_cycles;
    FILE *log;             /* a line for each echo, as it ends: ping, ms since power, mm, us that the line was high; or NULL */

    void (*on_byte)(void *owner, uint8_t byte);
    void *owner;
};

/* Loads a program; false, with the reason said, where that can't be done. */
bool board_init(struct board *board, const char *elf, uint64_t seed);

/* Runs until that moment, in seconds since the first power; false when the processor has stopped. */
bool board_run(struct board *board, double until_s);

/* Pulls the reset line: the program starts anew. */
void board_restart(struct board *board);

/* Seconds since the first power. */
double board_s(const struct board *board);

#endif
