/*
 * The board program: reads an ultrasonic module, an infrared distance sensor and a photoresistor, and prints a line for each
 * ping, 20 a second (line.h says what is in it). For an ATmega328P at 16 MHz; WIRING.md has pins and cautions.
 *
 * This file is all that touches the chip; what is decided is decided in ping.c, light.c, infrared.c, line.c and bytes.c,
 * which know nothing of it. Sections and tables named below are those of the ATmega328P data sheet.
 *
 *   timer 0      makes the millisecond
 *   timer 1      counts half microseconds for ever; its capture stamps the echo's edges
 *   converter    each millisecond one sample of the light, then one of the infrared sensor
 *   serial port  115200 baud from a buffer; printing never holds up measuring
 *   main loop    sleeps until one of these has something to tell
 */
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>
#include <util/atomic.h>
#include <util/delay.h>

#include "bytes.h"
#include "infrared.h"
#include "light.h"
#include "line.h"
#include "ping.h"

#define ECHO_PIN PB0 /* ICP1: no other pin can be captured */
#define TRIGGER_PIN PB1
#define INFRARED_CHANNEL 0
#define LIGHT_CHANNEL 1

#define COUNTS_PER_MS 250 /* 16 MHz / 64 */
#define TRIGGER_US 12 /* 10 are asked for (data sheet of the HC-SR04 module); interrupts can only lengthen it */

/* Samples of 100 ms must be there before the first line, and sensors need a moment after power has come. */
#define FIRST_PING_MS 200

static volatile uint32_t ms;
static volatile bool sampled;
static struct ping ping;
static struct light light;
static struct infrared infrared;
static struct bytes waiting;

ISR(TIMER0_COMPA_vect)
{
    ms++;
    ADMUX = _BV(REFS0) | LIGHT_CHANNEL; /* full scale is the supply, from which the light's divider hangs too */
    ADCSRA |= _BV(ADSC);
}

/* A conversion takes 13 cycles of 125 kHz, 0.1 ms: both are done long before the next millisecond. */
ISR(ADC_vect)
{
    uint16_t counts = ADC;
    if ((ADMUX & 0x0f) == LIGHT_CHANNEL) {
        light_add(&light, counts);
        ADMUX = _BV(REFS0) | INFRARED_CHANNEL;
        ADCSRA |= _BV(ADSC);
    } else {
        infrared_add(&infrared, counts);
        sampled = true;
    }
}

ISR(TIMER1_CAPT_vect)
{
    uint16_t stamp = ICR1;
    bool rising = (TCCR1B & _BV(ICES1)) != 0;
    TCCR1B ^= _BV(ICES1);
    TIFR1 = _BV(ICF1); /* changing the edge can set it (section Input Capture Unit) */
    ping_edge(&ping, rising, stamp);
}

ISR(USART_UDRE_vect)
{
    char byte;
    if (bytes_take(&waiting, &byte)) {
        UDR0 = (uint8_t)byte;
    } else {
        UCSR0B &= (uint8_t)~_BV(UDRIE0);
    }
}

static void print(const char *text, uint8_t length)
{
    bytes_put(&waiting, text, length);
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE)
    {
        UCSR0B |= _BV(UDRIE0);
    }
}

static void set_up(void)
{
    DDRB = _BV(TRIGGER_PIN);
    PORTB = _BV(ECHO_PIN); /* its pull-up: without a module the line is high and nothing is heard in its noise */
    DIDR0 = _BV(INFRARED_CHANNEL) | _BV(LIGHT_CHANNEL); /* their digital inputs off: less current, less noise */

    OCR0A = COUNTS_PER_MS - 1;
    TCCR0A = _BV(WGM01);
    TIMSK0 = _BV(OCIE0A);
    TCCR0B = _BV(CS01) | _BV(CS00);

    TIMSK1 = _BV(ICIE1);
    /* Capture waits for four equal samples: a glitch is no edge; both edges are 0.25 microseconds late alike. */
    TCCR1B = _BV(ICNC1) | _BV(ICES1) | _BV(CS11);

    ADCSRA = _BV(ADEN) | _BV(ADIE) | _BV(ADPS2) | _BV(ADPS1) | _BV(ADPS0);

    /*
     * 16 MHz / (8 * 17) = 117,647 baud, 2.1 % fast. Without double speed the nearest is 16 MHz / (16 * 9) = 111,111, 3.5 %
     * slow: too far (table "Examples of UBRRn Settings", 16 MHz). 8 data bits, no parity, 1 stop bit.
     */
    UCSR0A = _BV(U2X0);
    UBRR0 = 16;
    UCSR0C = _BV(UCSZ01) | _BV(UCSZ00);
    UCSR0B = _BV(TXEN0);
}

/* Whether the line's beginning could be printed; if not, the whole line is left out. */
static bool send_ping(uint32_t now)
{
    bool triggers;
    uint32_t hundredths;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE)
    {
        hundredths = light_hundredths(&light);
        triggers = ping_send(&ping, now, (PINB & _BV(ECHO_PIN)) != 0);
        if (triggers) {
            TCCR1B |= _BV(ICES1);
            TIFR1 = _BV(ICF1);
        }
    }
    if (triggers) {
        PORTB |= _BV(TRIGGER_PIN);
        _delay_us(TRIGGER_US);
        PORTB &= (uint8_t)~_BV(TRIGGER_PIN);
    }
    if (bytes_room(&waiting) < LINE_HEAD_BYTES + LINE_TAIL_BYTES) {
        return false;
    }
    char head[LINE_HEAD_BYTES];
    uint8_t length = line_head(head, now, hundredths);
    print(head, length);
    return true;
}

int main(void)
{
    bool by_watchdog = (MCUSR & _BV(WDRF)) != 0;
    MCUSR = 0;
    wdt_enable(WDTO_500MS); /* after its own reset the watchdog runs on with its shortest time, 16 ms */
    wdt_reset();
    ping_init(&ping, FIRST_PING_MS);
    light_init(&light);
    infrared_init(&infrared);
    bytes_init(&waiting);
    set_up();
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    static const char started[] = "board program starts\n";
    static const char again[] = "board program starts again: it stood still\n";
    if (by_watchdog) {
        print(again, sizeof again - 1);
    } else {
        print(started, sizeof started - 1);
    }

    bool printing = false;
    uint32_t seen = 0;
    for (;;) {
        cli();
        uint32_t now = ms;
        bool over = ping_is_over(&ping, now);
        if (now == seen && !over) {
            sleep_enable();
            sei(); /* takes effect after the next instruction, so that nothing can come in between */
            sleep_cpu();
            sleep_disable();
            continue;
        }
        seen = now;
        uint16_t echo = over ? ping_take(&ping) : PING_NO_READING;
        uint16_t counts = over ? infrared_counts(&infrared) : 0;
        sei();
        if (over && printing) {
            char tail[LINE_TAIL_BYTES];
            uint8_t length = line_tail(tail, ping.is_there, echo, counts);
            print(tail, length);
        }
        if (ping_is_due(&ping, now)) {
            printing = send_ping(now);
            if (sampled) {
                sampled = false;
                wdt_reset(); /* only a board that still pings and samples goes on */
            }
        }
    }
}
