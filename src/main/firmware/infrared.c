#include "infrared.h"

#include <string.h>

void infrared_init(struct infrared *infrared)
{
    memset(infrared, 0, sizeof *infrared);
}

void infrared_add(struct infrared *infrared, uint16_t counts)
{
    infrared->samples[infrared->next] = counts;
    infrared->next = (uint8_t)((infrared->next + 1) % INFRARED_SAMPLES);
}

uint16_t infrared_counts(const struct infrared *infrared)
{
    uint16_t sorted[INFRARED_SAMPLES];
    for (uint8_t i = 0; i < INFRARED_SAMPLES; i++) {
        uint8_t at = i;
        for (; at > 0 && sorted[at - 1] > infrared->samples[i]; at--) {
            sorted[at] = sorted[at - 1];
        }
        sorted[at] = infrared->samples[i];
    }
    return sorted[INFRARED_SAMPLES / 2];
}
