/**
 * Open Sound Control over the network: frames out as bundles, packets in as messages.
 *
 * <pre>
 *   path thread:   SoundFrame &gt; UdpTarget &gt; OscEncoder &gt; network
 *                  SoundFrame &gt; StreamTarget &gt; FrameHandover (NewestFrames)
 *   way to ...:    FrameHandover &gt; StreamTalk &gt; OscEncoder &gt; PacketFraming &gt; StreamConnection &gt; network
 *   osc-receiver:  network &gt; UdpPackets &gt; OscReceiver &gt; OscPacketReader &gt; ReceivedMessage &gt; listener
 *                            UdpPackets &gt; PacketDecoder &gt; OscPart &gt; PacketWords, or remote control
 *   osc-stream-...: network &gt; StreamPackets (PacketSplitter) &gt; as above
 * </pre>
 *
 * <p>Start reading at UdpTarget, then OscEncoder; for connections, at StreamTarget; for what arrives, at PacketSource.
 */
@NullMarked
package handspan.outside.osc;

import org.jspecify.annotations.NullMarked;
