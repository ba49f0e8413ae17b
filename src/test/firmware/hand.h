/*
 * The scripted hand, and what else changes in the simulated room. Time in seconds since power came.
 *
 * Orders, one a line, each with its moment before it (in a script) or obeyed at once (from whoever drives the test):
 *
 *     hand MM [S]       the pitch hand goes to that distance, within S seconds (0: at once)
 *     away              it leaves; what is left is the room (see rest)
 *     rest MM           what the echo comes back from when no hand is there; 0: nothing
 *     lux VALUE [S]     light on the photoresistor, evenly in its logarithm within S seconds
 *     flicker DEPTH HZ  of that light, 0..1
 *     noise MM          standard deviation of each echo's distance
 *     miss COUNT        so many pings stay without an echo
 *     hang 0|1          the module's echo line stays high
 *     unplug 0|1        there is no module
 *     glitch COUNT      after so many echoes the line is high for a microsecond more
 */
#ifndef HAND_H
#define HAND_H

#include <stdbool.h>
#include <stdio.h>

struct hand {
    bool is_there;
    double from_mm, to_mm, move_s, moved_s; /* position now: between from and to */
    double rest_mm;
    double from_lux, to_lux, lux_s, luxed_s;
    double flicker01, flicker_hz;
    double noise_mm;
    int misses;
    int glitches;
    bool hangs;
    bool unplugged;
};

void hand_init(struct hand *hand);

/* Obeys an order at a moment; false where it is none. */
bool hand_obey(struct hand *hand, const char *order, double now_s);

/* Obeys what is due of a script; keeps the first line that is not in next. */
bool hand_follow(struct hand *hand, FILE *script, char *next, int size, double now_s);

/* How far away that is from which an echo comes; 0 for nothing. */
double hand_mm(const struct hand *hand, double now_s);

/* Light with its flicker. */
double hand_lux(const struct hand *hand, double now_s);

#endif
