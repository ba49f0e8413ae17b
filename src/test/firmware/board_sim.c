#include "board_sim.h"

#include <math.h>
#include <stdarg.h>
#include <simavr/avr_adc.h>
#include <simavr/avr_ioport.h>
#include <simavr/avr_uart.h>
#include <simavr/sim_cycle_timers.h>
#include <simavr/sim_elf.h>
#include <simavr/sim_irq.h>
#include <stdlib.h>
#include <string.h>

#include "sensors.h"

#define ECHO_BIT 0
#define TRIGGER_BIT 1
#define INFRARED_CHANNEL 0
#define LIGHT_CHANNEL 1

static uint64_t cycles(double us)
{
    return (uint64_t)llround(us * (BOARD_HZ / 1e6));
}

double board_s(const struct board *board)
{
    return (double)board->avr->cycle / BOARD_HZ;
}

static void drive_echo(struct board *board, bool high)
{
    /* told first: at each write to the port the simulator sets what is driven from outside anew, else the pull-up */
    avr_ioport_external_t outside = {.name = 'B', .mask = 1 << ECHO_BIT, .value = (high ? 1 : 0) << ECHO_BIT};
    avr_ioctl(board->avr, AVR_IOCTL_IOPORT_SET_EXTERNAL('B'), &outside);
    avr_raise_irq(board->echo_pin, high);
}

/* What the module drives when it does not ping. Without one nothing does, and the program's pull-up shows. */
static void rest_echo(struct board *board)
{
    if (board->hand.unplugged) {
        avr_ioport_external_t nothing = {.name = 'B', .mask = 0, .value = 0};
        avr_ioctl(board->avr, AVR_IOCTL_IOPORT_SET_EXTERNAL('B'), &nothing);
    } else {
        drive_echo(board, board->hand.hangs);
    }
}

static avr_cycle_count_t glitch_ends(avr_t *avr, avr_cycle_count_t when, void *param)
{
    (void)avr;
    (void)when;
    rest_echo(param);
    return 0;
}

static avr_cycle_count_t glitch_begins(avr_t *avr, avr_cycle_count_t when, void *param)
{
    (void)when;
    drive_echo(param, true);
    avr_cycle_timer_register(avr, cycles(1), glitch_ends, param);
    return 0;
}

static void write_log(struct board *board, double echo_us)
{
    if (board->log != NULL) {
        double sent_ms = (double)(board->trigger_cycle - board->power_cycle) / (BOARD_HZ / 1e3);
        fprintf(board->log, "%llu\t%.4f\t%.4f\t%.4f\n", (unsigned long long)board->pings, sent_ms, board->mm, echo_us);
        fflush(board->log);
    }
}

static avr_cycle_count_t echo_ends(avr_t *avr, avr_cycle_count_t when, void *param)
{
    (void)when;
    struct board *board = param;
    if (board->hand.hangs) {
        return avr->cycle + cycles(1000);
    }
    write_log(board, (double)(avr->cycle - board->rise_cycle) / (BOARD_HZ / 1e6));
    rest_echo(board);
    if (board->hand.glitches > 0) {
        board->hand.glitches--;
        avr_cycle_timer_register(avr, cycles(5000), glitch_begins, board);
    }
    return 0;
}

static avr_cycle_count_t echo_begins(avr_t *avr, avr_cycle_count_t when, void *param)
{
    (void)when;
    struct board *board = param;
    board->rise_cycle = avr->cycle;
    drive_echo(board, true);
    avr_cycle_timer_register(avr, cycles(board->flight_us), echo_ends, board);
    return 0;
}

/* The module pings when its trigger falls, unless it is busy. */
static void on_trigger(struct avr_irq_t *irq, uint32_t value, void *param)
{
    (void)irq;
    struct board *board = param;
    avr_t *avr = board->avr;
    if (value != 0) {
        board->trigger_cycle = avr->cycle;
        return;
    }
    if (board->trigger_cycle == 0) {
        return;
    }
    double pulse_us = (double)(avr->cycle - board->trigger_cycle) / (BOARD_HZ / 1e6);
    board->least_trigger_us = fmin(board->least_trigger_us, pulse_us);
    board->most_trigger_us = fmax(board->most_trigger_us, pulse_us);
    board->pings++;
    double now_s = board_s(board);
    double mm = hand_mm(&board->hand, now_s);
    bool misses = mm <= 0 || board->hand.misses > 0;
    board->hand.misses -= board->hand.misses > 0 ? 1 : 0;
    board->mm = misses ? 0 : fmax(0, mm + board->hand.noise_mm * noise(&board->seed));
    board->flight_us = misses ? NO_ECHO_US : echo_us(board->mm);
    if (!board->hand.unplugged) {
        avr_cycle_timer_register(avr, cycles(BURST_US), echo_begins, board);
    }
}

static void give_volts(struct board *board, int channel, double volts)
{
    double noisy = volts + board->volts_noise * noise(&board->seed);
    long millivolts = lround(fmin(fmax(noisy, 0), SUPPLY_V) * 1000);
    avr_raise_irq(board->converter + ADC_IRQ_ADC0 + channel, (uint32_t)millivolts);
}

/* A conversion begins: what the pin carries now. */
static void on_conversion(struct avr_irq_t *irq, uint32_t value, void *param)
{
    (void)irq;
    struct board *board = param;
    double now_s = board_s(board);
    avr_adc_mux_t mux;
    memcpy(&mux, &value, sizeof value);
    if (mux.src == LIGHT_CHANNEL) {
        give_volts(board, LIGHT_CHANNEL, light_v(hand_lux(&board->hand, now_s)));
    } else {
        double cycle_s = floor(now_s / INFRARED_CYCLE_S) * INFRARED_CYCLE_S;
        bool dips = now_s - cycle_s < INFRARED_DIP_S;
        double mm = hand_mm(&board->hand, cycle_s);
        give_volts(board, INFRARED_CHANNEL, infrared_v(mm) + (dips ? INFRARED_DIP_V : 0));
    }
}

static void on_byte(struct avr_irq_t *irq, uint32_t value, void *param)
{
    (void)irq;
    struct board *board = param;
    if (board->on_byte != NULL) {
        board->on_byte(board->owner, (uint8_t)value);
    }
}

/* Pacing is no business of the simulated processor's. */
static void no_sleep(avr_t *avr, avr_cycle_count_t cycles)
{
    struct board *board = avr->custom.data;
    board->slept_cycles += cycles;
}

/* What the simulator says in passing is left out. */
static void log_errors(avr_t *avr, const int level, const char *format, va_list words)
{
    (void)avr;
    if (level == LOG_ERROR) {
        vfprintf(stderr, format, words);
    }
}

bool board_init(struct board *board, const char *elf, uint64_t seed)
{
    memset(board, 0, sizeof *board);
    hand_init(&board->hand);
    board->seed = seed;
    board->least_trigger_us = INFINITY;
    avr_global_logger_set(log_errors);
    elf_firmware_t firmware;
    memset(&firmware, 0, sizeof firmware);
    if (elf_read_firmware(elf, &firmware) != 0) {
        fprintf(stderr, "%s can't be read as a program for a microcontroller\n", elf);
        return false;
    }
    avr_t *avr = avr_make_mcu_by_name("atmega328p");
    if (avr == NULL) {
        fprintf(stderr, "the simulator knows no atmega328p\n");
        return false;
    }
    avr_init(avr);
    avr->log = LOG_ERROR;
    avr_load_firmware(avr, &firmware);
    avr->frequency = BOARD_HZ;
    avr->vcc = avr->avcc = avr->aref = (uint32_t)(SUPPLY_V * 1000);
    avr->sleep = no_sleep;
    avr->custom.data = board;
    board->avr = avr;

    uint32_t flags = 0;
    avr_ioctl(avr, AVR_IOCTL_UART_GET_FLAGS('0'), &flags);
    flags &= ~(uint32_t)(AVR_UART_FLAG_STDIO | AVR_UART_FLAG_POLL_SLEEP);
    avr_ioctl(avr, AVR_IOCTL_UART_SET_FLAGS('0'), &flags);

    board->echo_pin = avr_io_getirq(avr, AVR_IOCTL_IOPORT_GETIRQ('B'), ECHO_BIT);
    board->converter = avr_io_getirq(avr, AVR_IOCTL_ADC_GETIRQ, 0);
    avr_irq_register_notify(avr_io_getirq(avr, AVR_IOCTL_IOPORT_GETIRQ('B'), TRIGGER_BIT), on_trigger, board);
    avr_irq_register_notify(board->converter + ADC_IRQ_OUT_TRIGGER, on_conversion, board);
    avr_irq_register_notify(avr_io_getirq(avr, AVR_IOCTL_UART_GETIRQ('0'), UART_IRQ_OUTPUT), on_byte, board);
    rest_echo(board);
    return true;
}

void board_restart(struct board *board)
{
    avr_reset(board->avr);
    board->power_cycle = board->avr->cycle;
    board->trigger_cycle = 0;
    rest_echo(board);
}

bool board_run(struct board *board, double until_s)
{
    uint64_t until = (uint64_t)llround(until_s * BOARD_HZ);
    while (board->avr->cycle < until) {
        int state = avr_run(board->avr);
        if (state == cpu_Done || state == cpu_Crashed) {
            fprintf(stderr, "the processor stopped after %.3f s\n", board_s(board));
            return false;
        }
    }
    return true;
}
