#include "line.h"

/* printf would take 1.5 kB and half a millisecond. */
static char *put_text(char *at, const char *text)
{
    while (*text != '\0') {
        *at++ = *text++;
    }
    return at;
}

static char *put_number(char *at, uint32_t number)
{
    char digits[10];
    uint8_t count = 0;
    do {
        digits[count++] = (char)('0' + number % 10);
        number /= 10;
    } while (number > 0);
    while (count > 0) {
        *at++ = digits[--count];
    }
    return at;
}

uint8_t line_head(char text[LINE_HEAD_BYTES], uint32_t ms, uint32_t light_hundredths)
{
    char *at = put_text(text, "t=");
    at = put_number(at, ms);
    at = put_text(at, "ms light=");
    at = put_number(at, light_hundredths / 100);
    *at++ = '.';
    *at++ = (char)('0' + light_hundredths / 10 % 10);
    *at++ = (char)('0' + light_hundredths % 10);
    *at++ = ' ';
    *at = '\0';
    return (uint8_t)(at - text);
}

uint8_t line_tail(char text[LINE_TAIL_BYTES], bool has_module, uint16_t echo_halves, uint16_t infrared_counts)
{
    char *at = text;
    if (has_module) {
        at = put_text(at, "echo=");
        at = put_number(at, echo_halves / 2);
        at = put_text(at, echo_halves % 2 == 1 ? ".5us " : ".0us ");
    }
    at = put_text(at, "ir=");
    at = put_number(at, infrared_counts);
    *at++ = '\n';
    *at = '\0';
    return (uint8_t)(at - text);
}
