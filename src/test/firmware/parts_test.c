/*
 * The parts of the board program that know nothing of the chip, tested where they are compiled by any C compiler. Prints
 * how many checks passed; exits with 1 at the first that fails.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "bytes.h"
#include "infrared.h"
#include "light.h"
#include "line.h"
#include "ping.h"

static const double PI = 3.14159265358979323846;
static int checks;

static void check(bool holds, const char *words, int line)
{
    checks++;
    if (!holds) {
        fprintf(stderr, "line %d: not so: %s\n", line, words);
        exit(1);
    }
}

#define CHECK(condition) check(condition, #condition, __LINE__)

/* By hand: 1 m there and back at 343.2 m/s (20 degrees C) is 5827.5 microseconds, 11,655 half ones. */
static void an_echo_is_the_time_between_its_edges(void)
{
    struct ping ping;
    ping_init(&ping, 200);
    CHECK(!ping_is_due(&ping, 199));
    CHECK(ping_is_due(&ping, 200));
    CHECK(ping_send(&ping, 200, false));
    CHECK(!ping_is_over(&ping, 200));
    ping_edge(&ping, true, 1000);
    CHECK(!ping_is_over(&ping, 206));
    ping_edge(&ping, false, 12655);
    CHECK(ping_is_over(&ping, 206));
    CHECK(ping_take(&ping) == 11655);
    CHECK(!ping_is_over(&ping, 207));
}

/* The counter has 16 bits: 65,000 + 11,655 is 76,655, 11,119 after the wrap. */
static void an_echo_over_the_wrap_of_the_counter_is_right(void)
{
    struct ping ping;
    ping_init(&ping, 0);
    ping_send(&ping, 0, false);
    ping_edge(&ping, true, 65000);
    ping_edge(&ping, false, 11119);
    CHECK(ping_take(&ping) == 11655);
}

static void without_an_echo_there_is_no_reading_after_18_ms(void)
{
    struct ping ping;
    ping_init(&ping, 0);
    ping_send(&ping, 0, false);
    ping_edge(&ping, true, 1000);
    CHECK(!ping_is_over(&ping, 18));
    CHECK(ping_is_over(&ping, 19));
    CHECK(ping_take(&ping) == PING_NO_READING);
    /* the module's line falls at 38 ms (its data sheet): that is no echo of anything */
    ping_edge(&ping, false, 11464);
    CHECK(!ping_is_over(&ping, 39));
    ping_send(&ping, 50, false);
    ping_edge(&ping, false, 20000);
    CHECK(!ping_is_over(&ping, 51));
    ping_edge(&ping, true, 30000);
    ping_edge(&ping, false, 32000);
    CHECK(ping_take(&ping) == 2000);
    CHECK(ping.is_there);
}

static void a_module_that_is_not_there_gives_no_reading(void)
{
    struct ping ping;
    ping_init(&ping, 0);
    ping_send(&ping, 0, false);
    CHECK(!ping_is_over(&ping, 18));
    CHECK(ping_is_over(&ping, 19));
    CHECK(ping_take(&ping) == PING_NO_READING);
    CHECK(!ping.is_there);
}

static void a_module_that_hangs_is_not_triggered_and_said_at_once(void)
{
    struct ping ping;
    ping_init(&ping, 0);
    ping_send(&ping, 0, false);
    ping_edge(&ping, true, 1000);
    CHECK(ping_is_over(&ping, 19));
    ping_take(&ping);
    CHECK(!ping_send(&ping, 50, true));
    CHECK(ping_is_over(&ping, 50));
    CHECK(ping_take(&ping) == PING_NO_READING);
    CHECK(!ping_is_due(&ping, 99));
    CHECK(ping_is_due(&ping, 100));
}

static void where_nobody_is_there_lines_come_twice_as_often(void)
{
    struct ping ping;
    ping_init(&ping, 0);
    CHECK(!ping_send(&ping, 0, true));
    CHECK(ping_is_over(&ping, 0));
    ping_take(&ping);
    CHECK(!ping_is_due(&ping, 24));
    CHECK(ping_is_due(&ping, 25));
    /* one is plugged in */
    CHECK(ping_send(&ping, 25, false));
    ping_edge(&ping, true, 1000);
    ping_edge(&ping, false, 3000);
    CHECK(ping_take(&ping) == 2000);
    CHECK(!ping_is_due(&ping, 74));
    CHECK(ping_is_due(&ping, 75));
}

static void pings_keep_their_beat_also_over_the_wrap_of_the_milliseconds(void)
{
    struct ping ping;
    uint32_t first = 4294967200u; /* 96 ms before the wrap of 32 bits */
    ping_init(&ping, first);
    int sent = 0;
    for (uint32_t passed = 0; passed < 1000; passed++) {
        uint32_t now = first + passed;
        if (ping_is_over(&ping, now)) {
            ping_take(&ping);
        }
        if (ping_is_due(&ping, now)) {
            CHECK(passed % PING_PERIOD_MS == 0);
            ping_send(&ping, now, false);
            sent++;
        }
    }
    CHECK(sent == 1000 / PING_PERIOD_MS);
}

static void a_main_loop_that_comes_late_does_not_send_two_at_once(void)
{
    struct ping ping;
    ping_init(&ping, 0);
    ping_send(&ping, 130, false);
    CHECK(ping_is_over(&ping, 149));
    ping_take(&ping);
    CHECK(!ping_is_due(&ping, 179));
    CHECK(ping_is_due(&ping, 180));
}

/* The largest error of the mean over 100 ms, in counts, while lamps flicker: mean 500, amplitude 200. */
static double light_error(double hz)
{
    struct light light;
    light_init(&light);
    double worst = 0;
    for (int i = 0; i < 1000; i++) {
        light_add(&light, (uint16_t)lround(500 + 200 * sin(2 * PI * hz * i / 1000)));
        if (i >= LIGHT_SAMPLES) {
            worst = fmax(worst, fabs(light_hundredths(&light) / 100.0 - 500));
        }
    }
    return worst;
}

/*
 * Lamps flicker with twice the mains' frequency and its multiples. A mean over T leaves |sin(pi f T) / (pi f T)| of a
 * frequency f (Fourier transform of the rectangle): at 95 Hz, between, 0.0335, which is 6.7 counts; at 100.5 Hz, the mains
 * (or the board's resonator) 0.5 % off, 0.00497, 0.99 counts.
 */
static void lamps_on_50_and_on_60_hz_do_not_flicker_in_the_mean(void)
{
    const double rounding_counts = 0.05;
    CHECK(light_error(100) < rounding_counts);
    CHECK(light_error(120) < rounding_counts);
    CHECK(light_error(200) < rounding_counts);
    CHECK(light_error(240) < rounding_counts);
    CHECK(fabs(light_error(95) - 6.7) < 0.2);
    CHECK(fabs(light_error(100.5) - 0.99) < 0.1);
}

/* By hand: 60 samples of 700 and 40 of 200 are 500.00; full scale a hundred times is 1023.00. */
static void the_mean_is_that_of_the_latest_hundred(void)
{
    struct light light;
    light_init(&light);
    for (int i = 0; i < 70; i++) {
        light_add(&light, 1023);
    }
    for (int i = 0; i < 40; i++) {
        light_add(&light, 200);
    }
    for (int i = 0; i < 60; i++) {
        light_add(&light, 700);
    }
    CHECK(light_hundredths(&light) == 50000);
    for (int i = 0; i < 100; i++) {
        light_add(&light, 1023);
    }
    CHECK(light_hundredths(&light) == 102300);
}

static void two_spikes_in_five_samples_are_left_out(void)
{
    struct infrared infrared;
    infrared_init(&infrared);
    const uint16_t samples[] = {300, 700, 301, 690, 302};
    for (int i = 0; i < 5; i++) {
        infrared_add(&infrared, samples[i]);
    }
    CHECK(infrared_counts(&infrared) == 302); /* in order: 300 301 302 690 700 */
    infrared_add(&infrared, 299);              /* 300 leaves: 299 301 302 690 700 */
    infrared_add(&infrared, 298);              /* 700 leaves: 298 299 301 302 690 */
    CHECK(infrared_counts(&infrared) == 301);
}

static void lines_say_what_was_measured(void)
{
    char head[LINE_HEAD_BYTES];
    char tail[LINE_TAIL_BYTES];
    uint8_t length = line_head(head, 81234, 51234);
    CHECK(strcmp(head, "t=81234ms light=512.34 ") == 0);
    CHECK(length == strlen(head));
    length = line_tail(tail, true, 2331, 312);
    CHECK(strcmp(tail, "echo=1165.5us ir=312\n") == 0);
    CHECK(length == strlen(tail));
    line_head(head, 0, 5);
    CHECK(strcmp(head, "t=0ms light=0.05 ") == 0);
    line_tail(tail, true, PING_NO_READING, 0);
    CHECK(strcmp(tail, "echo=0.0us ir=0\n") == 0);
    line_tail(tail, false, PING_NO_READING, 7);
    CHECK(strcmp(tail, "ir=7\n") == 0);
}

static void the_longest_line_has_room(void)
{
    char head[LINE_HEAD_BYTES];
    char tail[LINE_TAIL_BYTES];
    uint8_t length = line_head(head, 4294967295u, 102300);
    CHECK(strcmp(head, "t=4294967295ms light=1023.00 ") == 0);
    CHECK(length < LINE_HEAD_BYTES);
    length = line_tail(tail, true, 65535, 1023);
    CHECK(strcmp(tail, "echo=32767.5us ir=1023\n") == 0);
    CHECK(length < LINE_TAIL_BYTES);
    CHECK(LINE_HEAD_BYTES + LINE_TAIL_BYTES <= BYTES_SIZE);
}

static void waiting_bytes_come_out_in_order_and_whole(void)
{
    struct bytes bytes;
    bytes_init(&bytes);
    char byte;
    CHECK(!bytes_take(&bytes, &byte));
    /* more than 256, so that the indexes wrap */
    for (int i = 0; i < 1000; i++) {
        char text[] = {(char)('a' + i % 26), (char)('A' + i % 26), '\n'};
        CHECK(bytes_put(&bytes, text, 3));
        for (int j = 0; j < 3; j++) {
            CHECK(bytes_take(&bytes, &byte) && byte == text[j]);
        }
    }
}

static void what_finds_no_room_is_left_out_as_a_whole(void)
{
    struct bytes bytes;
    bytes_init(&bytes);
    char text[BYTES_SIZE];
    memset(text, 'x', sizeof text);
    CHECK(bytes_put(&bytes, text, BYTES_SIZE - 2));
    CHECK(!bytes_put(&bytes, "abc", 3));
    CHECK(bytes_room(&bytes) == 2);
    CHECK(bytes_put(&bytes, "yz", 2));
    CHECK(bytes_room(&bytes) == 0);
    char byte = 0;
    for (int i = 0; i < BYTES_SIZE - 1; i++) {
        bytes_take(&bytes, &byte);
    }
    CHECK(byte == 'y');
}

int main(void)
{
    an_echo_is_the_time_between_its_edges();
    an_echo_over_the_wrap_of_the_counter_is_right();
    without_an_echo_there_is_no_reading_after_18_ms();
    a_module_that_is_not_there_gives_no_reading();
    a_module_that_hangs_is_not_triggered_and_said_at_once();
    pings_keep_their_beat_also_over_the_wrap_of_the_milliseconds();
    where_nobody_is_there_lines_come_twice_as_often();
    a_main_loop_that_comes_late_does_not_send_two_at_once();
    lamps_on_50_and_on_60_hz_do_not_flicker_in_the_mean();
    the_mean_is_that_of_the_latest_hundred();
    two_spikes_in_five_samples_are_left_out();
    lines_say_what_was_measured();
    the_longest_line_has_room();
    waiting_bytes_come_out_in_order_and_whole();
    what_finds_no_room_is_left_out_as_a_whole();
    printf("parts of the board program: %d checks passed\n", checks);
    return 0;
}
