#include "bytes.h"

void bytes_init(struct bytes *bytes)
{
    bytes->put = 0;
    bytes->taken = 0;
}

/* The indexes run on over 8 bits and are masked at use, so that full and empty differ. */
uint8_t bytes_room(const struct bytes *bytes)
{
    return (uint8_t)(BYTES_SIZE - (uint8_t)(bytes->put - bytes->taken));
}

bool bytes_put(struct bytes *bytes, const char *text, uint8_t length)
{
    if (length > bytes_room(bytes)) {
        return false;
    }
    uint8_t put = bytes->put;
    for (uint8_t i = 0; i < length; i++) {
        bytes->held[put++ % BYTES_SIZE] = text[i];
    }
    bytes->put = put;
    return true;
}

bool bytes_take(struct bytes *bytes, char *byte)
{
    uint8_t taken = bytes->taken;
    if (taken == bytes->put) {
        return false;
    }
    *byte = bytes->held[taken % BYTES_SIZE];
    bytes->taken = (uint8_t)(taken + 1);
    return true;
}
