/*
 * The board program on the simulated microcontroller, as fast as that runs, held against what its pins were given. Prints
 * figures; exits with 1 at the first check that fails.
 *
 *     board_test PROGRAM.elf
 */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "board_sim.h"
#include "sensors.h"

#define MOST_LINES 4000
#define LINE_BYTES 64

/* Two stamps of half a microsecond each; and each edge comes to the pin up to an instruction (0.25 us) apart from its log. */
static const double ECHO_STEP_US = 0.5;
static const double EDGE_US = 0.25;

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

/* A board with what it has printed. */
struct bench {
    struct board board;
    char text[MOST_LINES][LINE_BYTES];
    double ended_s[MOST_LINES];
    int lines;
    int length;
    char *log;
    size_t log_size;
};

static void take_byte(void *owner, uint8_t byte)
{
    struct bench *bench = owner;
    if (bench->lines == MOST_LINES || bench->length == LINE_BYTES - 1) {
        fprintf(stderr, "more lines, or longer ones, than there can be\n");
        exit(1);
    }
    if (byte == '\n') {
        bench->text[bench->lines][bench->length] = '\0';
        bench->ended_s[bench->lines] = board_s(&bench->board);
        bench->lines++;
        bench->length = 0;
    } else {
        bench->text[bench->lines][bench->length++] = (char)byte;
    }
}

/* Memory is painted, so that what the program never touches, between its variables and its stack, can be counted. */
static const int RAM_FROM = 0x100;
static const int RAM_BYTES = 2048;
static const uint8_t PAINT = 0xa5;

static int longest_untouched(const struct bench *bench)
{
    int longest = 0;
    int run = 0;
    for (int i = 0; i < RAM_BYTES; i++) {
        run = bench->board.avr->data[RAM_FROM + i] == PAINT ? run + 1 : 0;
        longest = run > longest ? run : longest;
    }
    return longest;
}

static struct bench *begin(const char *elf)
{
    struct bench *bench = calloc(1, sizeof *bench);
    if (bench == NULL || !board_init(&bench->board, elf, 11)) {
        exit(1);
    }
    memset(bench->board.avr->data + RAM_FROM, PAINT, RAM_BYTES);
    bench->board.on_byte = take_byte;
    bench->board.owner = bench;
    bench->board.log = open_memstream(&bench->log, &bench->log_size);
    return bench;
}

static void end(struct bench *bench)
{
    fclose(bench->board.log);
    free(bench->log);
    avr_terminate(bench->board.avr);
    free(bench);
}

static void obey(struct bench *bench, const char *order)
{
    CHECK(hand_obey(&bench->board.hand, order, board_s(&bench->board)));
}

static void run(struct bench *bench, double seconds)
{
    CHECK(board_run(&bench->board, board_s(&bench->board) + seconds));
}

struct reading {
    long ms;
    double light, echo_us;
    int infrared;
    bool has_echo;
};

/* A line must be exactly what line.h says, to the last character. */
static struct reading read_line(const struct bench *bench, int line)
{
    struct reading reading = {0};
    char again[LINE_BYTES];
    const char *text = bench->text[line];
    reading.has_echo = strstr(text, "echo") != NULL;
    if (reading.has_echo) {
        CHECK(sscanf(text, "t=%ldms light=%lf echo=%lfus ir=%d", &reading.ms, &reading.light, &reading.echo_us,
                     &reading.infrared) == 4);
        snprintf(again, sizeof again, "t=%ldms light=%.2f echo=%.1fus ir=%d", reading.ms, reading.light, reading.echo_us,
                 reading.infrared);
    } else {
        CHECK(sscanf(text, "t=%ldms light=%lf ir=%d", &reading.ms, &reading.light, &reading.infrared) == 3);
        snprintf(again, sizeof again, "t=%ldms light=%.2f ir=%d", reading.ms, reading.light, reading.infrared);
    }
    CHECK(strcmp(text, again) == 0);
    return reading;
}

static void first_line_is_a_remark(struct bench *bench)
{
    CHECK(strcmp(bench->text[0], "board program starts") == 0);
}

/* A minute of a hand that moves to and fro and is noisy: each line against the echo that the pin had. */
static void every_ping_is_printed_as_it_was(const char *elf)
{
    struct bench *bench = begin(elf);
    obey(bench, "noise 1.5");
    obey(bench, "hand 40");
    for (int i = 0; i < 20; i++) {
        char order[32];
        snprintf(order, sizeof order, "hand %d 2.5", i % 2 == 0 ? 600 : 40);
        obey(bench, order);
        run(bench, 3);
    }
    fflush(bench->board.log);
    first_line_is_a_remark(bench);
    int line = 1;
    double worst_us = 0;
    double sum_us = 0;
    for (char *at = strtok(bench->log, "\n"); at != NULL; at = strtok(NULL, "\n"), line++) {
        double sent_ms = 0;
        double high_us = 0;
        CHECK(sscanf(at, "%*d %lf %*f %lf", &sent_ms, &high_us) == 2);
        struct reading reading = read_line(bench, line);
        CHECK(reading.ms == 200 + 50 * (line - 1));
        CHECK(sent_ms - reading.ms > 0 && sent_ms - reading.ms < 0.5);
        double error_us = reading.echo_us - high_us;
        CHECK(fabs(error_us) <= ECHO_STEP_US + 2 * EDGE_US);
        worst_us = fmax(worst_us, fabs(error_us));
        sum_us += error_us;
    }
    int pings = line - 1;
    CHECK(pings == (int)bench->board.pings && pings == bench->lines - 1 && pings == (60000 - 200) / 50);
    CHECK(bench->board.least_trigger_us >= 10);
    double mean_us = sum_us / pings;
    CHECK(fabs(mean_us) < ECHO_STEP_US / 2);
    printf("%d pings, %d lines; echo times off by at most %.2f us (%.3f mm), %.3f us on average; trigger %.1f to %.1f us\n",
           pings, bench->lines - 1, worst_us, worst_us * 0.1716, mean_us, bench->board.least_trigger_us,
           bench->board.most_trigger_us);
    int untouched = longest_untouched(bench);
    CHECK(untouched > 512);
    printf("%d of %d bytes of memory are never touched; the processor sleeps %.1f %% of the time\n", untouched, RAM_BYTES,
           100.0 * (double)bench->board.slept_cycles / (double)bench->board.avr->cycle);
    /* data sheet, baud rate equations and register summary: UCSR0A 0xC0 (U2X0 is bit 1), UBRR0 0xC4 and 0xC5 */
    const uint8_t *registers = bench->board.avr->data;
    double divider = (registers[0xc0] & 2) != 0 ? 8 : 16;
    double baud = BOARD_HZ / (divider * (registers[0xc4] + 256 * registers[0xc5] + 1));
    CHECK(fabs(baud / 115200 - 1) < 0.0215);
    printf("%.0f baud, %+.1f %% off 115,200\n", baud, 100 * (baud / 115200 - 1));
    end(bench);
}

/* How far the printed light moves in 5 s under a lamp that flickers by 30 %; its mean comes back too. */
static double light_span(const char *elf, double hz, double *mean)
{
    struct bench *bench = begin(elf);
    char order[32];
    snprintf(order, sizeof order, "flicker 0.3 %.1f", hz);
    obey(bench, "lux 50");
    obey(bench, order);
    run(bench, 5);
    double least = INFINITY;
    double most = -INFINITY;
    double sum = 0;
    for (int i = 1; i < bench->lines; i++) {
        double light = read_line(bench, i).light;
        least = fmin(least, light);
        most = fmax(most, light);
        sum += light;
    }
    *mean = sum / (bench->lines - 1);
    end(bench);
    return most - least;
}

static void lamps_do_not_flicker_in_the_lines(const char *elf)
{
    const double pi = 3.14159265358979323846;
    double counts = 0;
    for (int i = 0; i < 1000; i++) {
        counts += light_v(50 * (1 + 0.3 * sin(2 * pi * i / 1000))) / SUPPLY_V * 1023 / 1000;
    }
    double darkest = light_v(50 * 0.7) / SUPPLY_V * 1023;
    double brightest = light_v(50 * 1.3) / SUPPLY_V * 1023;
    double at_100, at_120, at_95;
    double span_100 = light_span(elf, 100, &at_100);
    double span_120 = light_span(elf, 120, &at_120);
    double span_95 = light_span(elf, 95, &at_95);
    CHECK(span_100 < 0.1 && span_120 < 0.1);
    CHECK(span_95 > 1); /* what is no multiple of 10 Hz stays: the check can fail */
    CHECK(fabs(at_100 - counts) < 1 && fabs(at_120 - counts) < 1); /* the converter drops what is under a count */
    printf("light between %.0f and %.0f counts: printed within %.2f at 100 Hz, %.2f at 120 Hz, %.2f at 95 Hz\n", darkest,
           brightest, span_100, span_120, span_95);
}

/* 300 mm: by the data sheet's points 0.925 V (its other drawing has 0.925 V at 30.19 cm), 189 counts; dips to 250. */
static void supply_dips_are_not_seen_in_the_infrared(const char *elf)
{
    struct bench *bench = begin(elf);
    obey(bench, "hand 300");
    run(bench, 20);
    int at_ping_in_dip = 0;
    for (int i = 2; i < bench->lines; i++) {
        struct reading reading = read_line(bench, i);
        CHECK(abs(reading.infrared - 189) <= 1);
        double s = (reading.ms + 2.2) / 1e3;
        at_ping_in_dip += fmod(s, INFRARED_CYCLE_S) < INFRARED_DIP_S ? 1 : 0;
    }
    CHECK(at_ping_in_dip > 3); /* some lines were made while the supply dipped */
    end(bench);
}

static void no_hand_is_no_reading_soon_and_the_next_ping_is_good(const char *elf)
{
    struct bench *bench = begin(elf);
    obey(bench, "hand 500");
    run(bench, 1.01); /* pings at 200, 250 .. 1000 ms: 17 */
    obey(bench, "miss 3");
    run(bench, 0.2); /* 1050 .. 1200 */
    obey(bench, "away");
    run(bench, 0.8);
    obey(bench, "hand 100");
    run(bench, 0.2);
    double hand_s = 0;
    double none_s = 0;
    for (int i = 1; i < bench->lines; i++) {
        struct reading reading = read_line(bench, i);
        bool missing = (reading.ms > 1000 && reading.ms <= 1150) || (reading.ms > 1200 && reading.ms <= 2000);
        CHECK((reading.echo_us == 0) == missing);
        double late_s = bench->ended_s[i] - reading.ms / 1e3;
        if (missing) {
            none_s = fmax(none_s, late_s);
        } else if (reading.ms <= 1000) {
            hand_s = fmax(hand_s, late_s - reading.echo_us / 1e6);
        }
    }
    /* 18 to 19 ms, and the end of the line, 18 bytes of 85 us */
    CHECK(none_s < 0.0215);
    /* the module's burst, and the end of the line, 21 bytes; time and light are out by then */
    CHECK(hand_s < 0.0035);
    printf("the end of a line comes %.1f ms after the ping and the echo's own time; no reading %.1f ms after the ping\n",
           hand_s * 1e3, none_s * 1e3);
    end(bench);
}

static void a_module_that_hangs_is_not_waited_for(const char *elf)
{
    struct bench *bench = begin(elf);
    obey(bench, "hand 300");
    run(bench, 1.01);
    obey(bench, "hang 1");
    run(bench, 1);
    obey(bench, "hang 0");
    run(bench, 1);
    uint64_t pings = bench->board.pings;
    int none = 0;
    for (int i = 1; i < bench->lines; i++) {
        struct reading reading = read_line(bench, i);
        CHECK(reading.ms == 200 + 50 * (i - 1));
        none += reading.echo_us == 0 ? 1 : 0;
    }
    CHECK(none == 20);
    CHECK(pings == (uint64_t)bench->lines - 1 - 19); /* the first of them went out before the line hung */
    end(bench);
}

/* After the first edge the capture waits for the other one, which is over before that. */
static void a_glitch_between_pings_costs_none(const char *elf)
{
    struct bench *bench = begin(elf);
    obey(bench, "hand 300");
    obey(bench, "glitch 10");
    run(bench, 1);
    CHECK(bench->board.hand.glitches == 0);
    for (int i = 1; i < bench->lines; i++) {
        CHECK(fabs(read_line(bench, i).echo_us - echo_us(300)) <= ECHO_STEP_US + 2 * EDGE_US);
    }
    end(bench);
}

static void without_a_module_lines_have_no_echo(const char *elf)
{
    struct bench *bench = begin(elf);
    obey(bench, "unplug 1");
    board_restart(&bench->board);
    obey(bench, "hand 300");
    run(bench, 1);
    int lines = bench->lines;
    for (int i = 1; i < lines; i++) {
        struct reading reading = read_line(bench, i);
        CHECK(!reading.has_echo && reading.ms == 200 + 25 * (i - 1));
    }
    CHECK(lines - 1 == (1000 - 200) / 25);
    obey(bench, "unplug 0");
    board_restart(&bench->board);
    bench->length = 0;
    run(bench, 1);
    CHECK(read_line(bench, bench->lines - 1).has_echo);
    end(bench);
}

/* The converter stops: its enable bit is taken away. ADCSRA is at 0x7A (data sheet, register summary). */
static void a_board_that_stands_still_starts_again(const char *elf)
{
    struct bench *bench = begin(elf);
    obey(bench, "hand 300");
    run(bench, 1);
    bench->board.avr->data[0x7a] = 0;
    run(bench, 2);
    int again = 0;
    for (int i = 1; i < bench->lines; i++) {
        again += strcmp(bench->text[i], "board program starts again: it stood still") == 0 ? 1 : 0;
    }
    CHECK(again == 1);
    CHECK(read_line(bench, bench->lines - 1).infrared == 189);
    end(bench);
}

int main(int count, char **words)
{
    if (count != 2) {
        fprintf(stderr, "board_test PROGRAM.elf\n");
        return 2;
    }
    setvbuf(stdout, NULL, _IOLBF, 0);
    every_ping_is_printed_as_it_was(words[1]);
    lamps_do_not_flicker_in_the_lines(words[1]);
    supply_dips_are_not_seen_in_the_infrared(words[1]);
    no_hand_is_no_reading_soon_and_the_next_ping_is_good(words[1]);
    a_module_that_hangs_is_not_waited_for(words[1]);
    a_glitch_between_pings_costs_none(words[1]);
    without_a_module_lines_have_no_echo(words[1]);
    a_board_that_stands_still_starts_again(words[1]);
    printf("board program on a simulated microcontroller: %d checks passed\n", checks);
    return 0;
}
