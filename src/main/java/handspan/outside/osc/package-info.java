/**
 * Open Sound Control over the network: frames out as bundles, packets in as messages.
 *
 * <pre>
 *   path thread:   SoundFrame &gt; OscEncoder &gt; ByteBuffer &gt; UdpTarget &gt; network
 *   osc-receiver:  network &gt; OscReceiver &gt; OscPacketReader &gt; ReceivedMessage &gt; listener
 * </pre>
 *
 * <p>Start reading at UdpTarget, then OscEncoder; for what arrives, at OscReceiver.
 */
@NullMarked
package handspan.outside.osc;

import org.jspecify.annotations.NullMarked;
