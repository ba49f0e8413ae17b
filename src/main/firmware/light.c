#include "light.h"

#include <string.h>

void light_init(struct light *light)
{
    memset(light, 0, sizeof *light);
}

void light_add(struct light *light, uint16_t counts)
{
    light->sum += counts;
    light->sum -= light->samples[light->next];
    light->samples[light->next] = counts;
    light->next++;
    if (light->next == LIGHT_SAMPLES) {
        light->next = 0;
    }
}

uint32_t light_hundredths(const struct light *light)
{
    return light->sum;
}
