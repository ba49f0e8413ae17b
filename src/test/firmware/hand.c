#include "hand.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

static const double PI = 3.14159265358979323846;

void hand_init(struct hand *hand)
{
    memset(hand, 0, sizeof *hand);
    hand->from_lux = hand->to_lux = 300;
}

/* 0 at the beginning of a move, 1 at its end, at rest at both. */
static double gone01(double began_s, double takes_s, double now_s)
{
    if (now_s >= began_s + takes_s) {
        return 1;
    }
    return (1 - cos(PI * (now_s - began_s) / takes_s)) / 2;
}

static double place_mm(const struct hand *hand, double now_s)
{
    return hand->from_mm + (hand->to_mm - hand->from_mm) * gone01(hand->moved_s, hand->move_s, now_s);
}

static double steady_lux(const struct hand *hand, double now_s)
{
    return hand->from_lux * pow(hand->to_lux / hand->from_lux, gone01(hand->luxed_s, hand->lux_s, now_s));
}

bool hand_obey(struct hand *hand, const char *order, double now_s)
{
    char word[16];
    double a = 0;
    double b = 0;
    int parts = sscanf(order, "%15s %lf %lf", word, &a, &b);
    if (parts >= 2 && strcmp(word, "hand") == 0 && a > 0 && b >= 0) {
        hand->from_mm = hand->is_there ? place_mm(hand, now_s) : a;
        hand->to_mm = a;
        hand->move_s = b;
        hand->moved_s = now_s;
        hand->is_there = true;
    } else if (parts == 1 && strcmp(word, "away") == 0) {
        hand->is_there = false;
    } else if (parts == 2 && strcmp(word, "rest") == 0) {
        hand->rest_mm = a;
    } else if (parts >= 2 && strcmp(word, "lux") == 0 && a > 0 && b >= 0) {
        hand->from_lux = steady_lux(hand, now_s);
        hand->to_lux = a;
        hand->lux_s = b;
        hand->luxed_s = now_s;
    } else if (parts == 3 && strcmp(word, "flicker") == 0 && a >= 0 && a < 1) {
        hand->flicker01 = a;
        hand->flicker_hz = b;
    } else if (parts == 2 && strcmp(word, "noise") == 0) {
        hand->noise_mm = a;
    } else if (parts == 2 && strcmp(word, "miss") == 0) {
        hand->misses = (int)a;
    } else if (parts == 2 && strcmp(word, "glitch") == 0) {
        hand->glitches = (int)a;
    } else if (parts == 2 && strcmp(word, "hang") == 0) {
        hand->hangs = a != 0;
    } else if (parts == 2 && strcmp(word, "unplug") == 0) {
        hand->unplugged = a != 0;
    } else {
        return false;
    }
    return true;
}

bool hand_follow(struct hand *hand, FILE *script, char *next, int size, double now_s)
{
    for (;;) {
        while (next[0] == '\0' || next[0] == '#' || next[0] == '\n') {
            if (fgets(next, size, script) == NULL) {
                next[0] = '\0';
                return true;
            }
        }
        char *order = NULL;
        double due_s = strtod(next, &order);
        if (due_s > now_s) {
            return true;
        }
        if (!hand_obey(hand, order, now_s)) {
            return false;
        }
        next[0] = '\0';
    }
}

double hand_mm(const struct hand *hand, double now_s)
{
    return hand->is_there ? place_mm(hand, now_s) : hand->rest_mm;
}

double hand_lux(const struct hand *hand, double now_s)
{
    return steady_lux(hand, now_s) * (1 + hand->flicker01 * sin(2 * PI * hand->flicker_hz * now_s));
}
