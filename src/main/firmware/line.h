/*
 * The line of a cycle, in two parts. Pure.
 *
 *     t=81234ms light=512.34 echo=1165.5us ir=312
 *
 * t: when the ping went out, in this board's milliseconds. light: counts of 10 bits, averaged. echo: microseconds there and
 * back; 0.0 is no reading; left out where no module has ever answered, so that the infrared sensor is taken for the pitch
 * hand. ir: counts of 10 bits.
 *
 * Time and light are known when the ping goes out and are sent while it flies: after the echo only the end of the line has
 * to go over the wire, 21 characters (1.8 ms) instead of 44.
 *
 * No reading is a number and not a word, because a program that reads along learns what a line holds from its first lines,
 * and would not learn of an echo that is only a word as long as there is no hand.
 */
#ifndef LINE_H
#define LINE_H

#include <stdbool.h>
#include <stdint.h>

/* Room for the longest of each with its terminating 0. */
#define LINE_HEAD_BYTES 32
#define LINE_TAIL_BYTES 32

/* Time and light; the length. */
uint8_t line_head(char text[LINE_HEAD_BYTES], uint32_t ms, uint32_t light_hundredths);

/* The echo, given in half microseconds, the infrared sensor, and the end of the line; the length. */
uint8_t line_tail(char text[LINE_TAIL_BYTES], bool has_module, uint16_t echo_halves, uint16_t infrared_counts);

#endif
