/*
 * The simulated board as a serial port. Its serial line is a pseudo-terminal, which a link of a chosen name points to; board
 * time is kept with the clock on the wall. Orders for the scripted hand (hand.h) are read from standard input; its end, or
 * "quit", ends the board: the port hangs up as if the cable were pulled.
 *
 * Like most boards it starts anew when its port is opened, and what it prints while nobody has the port open is lost.
 *
 *     board_port PROGRAM.elf LINK [LOG]
 *
 * LOG gets a line for each ping as its echo ends: its number, when it was sent in milliseconds since power, the
 * millimetres, and how many microseconds the echo line was high.
 */
#define _GNU_SOURCE
#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <stdlib.h>
#include <string.h>
#include <termios.h>
#include <time.h>
#include <unistd.h>

#include "board_sim.h"

#define SEED 20250607u
#define STEP_S 0.001

/* Half a count of the converter, about what such a converter adds (common practice). */
#define VOLTS_NOISE 0.0025

static int port = -1;
static bool is_open;
static uint64_t lost;

static void send_byte(void *owner, uint8_t byte)
{
    (void)owner;
    if (is_open && write(port, &byte, 1) != 1) {
        lost++;
    }
}

/* A raw pseudo-terminal; -1 where there is none. Opened and closed once, so that "nobody has it open" can be seen. */
static int open_port(const char *link)
{
    int master = posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK);
    if (master < 0 || grantpt(master) != 0 || unlockpt(master) != 0) {
        return -1;
    }
    const char *name = ptsname(master);
    int slave = open(name, O_RDWR | O_NOCTTY);
    struct termios settings;
    if (slave < 0 || tcgetattr(slave, &settings) != 0) {
        return -1;
    }
    cfmakeraw(&settings);
    tcsetattr(slave, TCSANOW, &settings);
    close(slave);
    unlink(link);
    return symlink(name, link) == 0 ? master : -1;
}

/* Whether somebody has it open; what they write is thrown away. */
static bool look(void)
{
    struct pollfd wanted = {.fd = port, .events = POLLIN};
    char thrown[256];
    poll(&wanted, 1, 0);
    if ((wanted.revents & POLLIN) != 0 && read(port, thrown, sizeof thrown) < 0 && errno != EAGAIN) {
        return false;
    }
    return (wanted.revents & POLLHUP) == 0;
}

/* Obeys all orders that are there; false at their end. */
static bool obey(struct board *board)
{
    static char line[128];
    static size_t length;
    struct pollfd wanted = {.fd = STDIN_FILENO, .events = POLLIN};
    while (poll(&wanted, 1, 0) == 1) {
        if (read(STDIN_FILENO, line + length, 1) != 1) {
            return false;
        }
        if (line[length] != '\n' && length < sizeof line - 1) {
            length++;
            continue;
        }
        line[length] = '\0';
        length = 0;
        if (strcmp(line, "quit") == 0) {
            return false;
        }
        if (line[0] != '\0' && !hand_obey(&board->hand, line, board_s(board))) {
            fprintf(stderr, "not an order: %s\n", line);
            exit(2);
        }
    }
    return true;
}

static double wall_s(void)
{
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double)now.tv_sec + now.tv_nsec * 1e-9;
}

int main(int count, char **words)
{
    if (count < 3) {
        fprintf(stderr, "board_port PROGRAM.elf LINK [LOG]\n");
        return 2;
    }
    struct board board;
    if (!board_init(&board, words[1], SEED)) {
        return 1;
    }
    board.on_byte = send_byte;
    board.volts_noise = VOLTS_NOISE;
    board.log = count > 3 ? fopen(words[3], "w") : NULL;
    port = open_port(words[2]);
    if (port < 0) {
        fprintf(stderr, "no pseudo-terminal to be had at %s\n", words[2]);
        return 1;
    }
    double began_s = wall_s();
    double latest_s = 0;
    bool runs = true;
    for (double now_s = STEP_S; runs && obey(&board); now_s += STEP_S) {
        bool opened = look();
        if (opened && !is_open) {
            tcflush(port, TCIOFLUSH);
            board_restart(&board);
        }
        is_open = opened;
        runs = board_run(&board, now_s);
        double wait_s = began_s + now_s - wall_s();
        if (wait_s > 0) {
            struct timespec wait = {.tv_sec = 0, .tv_nsec = (long)(wait_s * 1e9)};
            nanosleep(&wait, NULL);
        } else if (-wait_s > latest_s) {
            latest_s = -wait_s;
        }
    }
    unlink(words[2]);
    close(port);
    fprintf(stderr, "board: %llu pings in %.1f s, at most %.1f ms behind the clock, %llu bytes found no room\n",
            (unsigned long long)board.pings, board_s(&board), latest_s * 1e3, (unsigned long long)lost);
    return runs ? 0 : 1;
}
