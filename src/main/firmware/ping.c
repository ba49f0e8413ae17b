#include "ping.h"

void ping_init(struct ping *ping, uint32_t due_ms)
{
    ping->state = PING_RESTS;
    ping->due_ms = due_ms;
    ping->echo = PING_NO_READING;
    ping->is_there = false;
}

bool ping_is_due(const struct ping *ping, uint32_t now_ms)
{
    /* the difference is right over the wrap of 32 bits, after 49 days */
    return ping->state == PING_RESTS && (int32_t)(now_ms - ping->due_ms) >= 0;
}

bool ping_send(struct ping *ping, uint32_t now_ms, bool line_is_high)
{
    uint32_t period_ms = line_is_high && !ping->is_there ? PING_NOBODY_MS : PING_PERIOD_MS;
    ping->sent_ms = now_ms;
    ping->due_ms += period_ms;
    if ((int32_t)(now_ms - ping->due_ms) >= 0) {
        ping->due_ms = now_ms + period_ms; /* late by a whole period: do not send two at once */
    }
    ping->echo = PING_NO_READING;
    ping->state = line_is_high ? PING_OVER : PING_SENT;
    return !line_is_high;
}

void ping_edge(struct ping *ping, bool rising, uint16_t stamp)
{
    if (rising && ping->state == PING_SENT) {
        ping->rise = stamp;
        ping->is_there = true;
        ping->state = PING_FLIES;
    } else if (!rising && ping->state == PING_FLIES) {
        ping->echo = (uint16_t)(stamp - ping->rise);
        ping->state = PING_OVER;
    }
}

bool ping_is_over(struct ping *ping, uint32_t now_ms)
{
    bool waits = ping->state == PING_SENT || ping->state == PING_FLIES;
    if (waits && now_ms - ping->sent_ms > PING_WAIT_MS) {
        ping->state = PING_OVER;
    }
    return ping->state == PING_OVER;
}

uint16_t ping_take(struct ping *ping)
{
    ping->state = PING_RESTS;
    return ping->echo;
}
