/*
 * One ping after another, and what came back. Pure: time comes with the calls; no register is touched here.
 *
 * Edges of the echo line are stamped by a counter of half microseconds (16 MHz / 8) that wraps at 16 bits, which is every
 * 32.8 ms: longer than the longest echo that is waited for.
 */
#ifndef PING_H
#define PING_H

#include <stdbool.h>
#include <stdint.h>

/*
 * From ping to ping. A ping must not take the echo of the one before for its own: after 50 ms that one has been 17 m on
 * its way (343 m/s), so that its reflector would be 8.6 m away, more than twice as far as such a module reaches (4 m, data
 * sheet of the HC-SR04 module, which advises 60 ms for that). A shorter period gains nothing for modules that answer a
 * ping without echo by 38 ms of high level.
 */
#define PING_PERIOD_MS 50

/*
 * Where no module has ever answered and the line is pulled up, nobody is there: lines then come as often as an infrared
 * sensor can have something new (every 38.3 ms, 28.7 at the least, data sheet E4-A00201EN) and a little more.
 */
#define PING_NOBODY_MS 25

/*
 * After this there is no reading: sound has been to 3 m and back (6 m / 343 m/s = 17.5 ms, and half a millisecond for the
 * module's own burst). A hand plays within 0.6 m. Not waiting for the module's own end of 38 ms tells 20 ms sooner that a
 * hand has left.
 */
#define PING_WAIT_MS 18

/* No reading. No echo has it: under 2 cm (117 microseconds) a module measures nothing. */
#define PING_NO_READING 0

enum ping_state {
    PING_RESTS,
    PING_SENT,   /* the module has been told to ping */
    PING_FLIES,  /* the echo line is high */
    PING_OVER    /* there is a result that nobody has taken yet */
};

struct ping {
    enum ping_state state;
    uint32_t due_ms;
    uint32_t sent_ms;
    uint16_t rise;
    uint16_t echo; /* half microseconds, or PING_NO_READING */
    bool is_there; /* the module has answered a ping, be it by a time-out */
};

/* The first ping is due at that time. */
void ping_init(struct ping *ping, uint32_t due_ms);

/* Whether the next ping should go out now. */
bool ping_is_due(const struct ping *ping, uint32_t now_ms);

/*
 * It goes out now: whether to trigger the module. Where its echo line is still high it is busy with the ping before, or
 * hangs, and there is no reading.
 */
bool ping_send(struct ping *ping, uint32_t now_ms, bool line_is_high);

/* An edge of the echo line, with its time in half microseconds. */
void ping_edge(struct ping *ping, bool rising, uint16_t stamp);

/* Whether its result is there; what has not come by PING_WAIT_MS is none. */
bool ping_is_over(struct ping *ping, uint32_t now_ms);

/* Its result, once: half microseconds, or PING_NO_READING. */
uint16_t ping_take(struct ping *ping);

#endif
