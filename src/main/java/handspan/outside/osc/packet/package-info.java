/**
 * Packets as bytes, and bytes as packets: what Open Sound Control 1.0 lays down, how a stream parts packets, and what
 * is wrong with bytes that are neither. No network, no thread.
 *
 * <p>Start reading at {@link handspan.outside.osc.packet.OscBytes}; for what arrives, at
 * {@link handspan.outside.osc.packet.PacketDecoder}; for streams, at {@link handspan.outside.osc.packet.PacketFraming}.
 */
@NullMarked
package handspan.outside.osc.packet;

import org.jspecify.annotations.NullMarked;
