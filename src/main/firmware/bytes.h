/*
 * Bytes that wait for the serial port. Pure. One side puts, the other takes (an interrupt), without locks: each index has
 * one owner and is a single byte.
 */
#ifndef BYTES_H
#define BYTES_H

#include <stdbool.h>
#include <stdint.h>

#define BYTES_SIZE 128 /* a power of two; two lines and more */

struct bytes {
    volatile uint8_t put;
    volatile uint8_t taken;
    char held[BYTES_SIZE];
};

void bytes_init(struct bytes *bytes);

/* How many more there is room for. */
uint8_t bytes_room(const struct bytes *bytes);

/* All of a text, or nothing where there is no room: a line that is cut could pass for another one. */
bool bytes_put(struct bytes *bytes, const char *text, uint8_t length);

/* The next one; false where none waits. */
bool bytes_take(struct bytes *bytes, char *byte);

#endif
