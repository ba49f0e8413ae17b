/**
 * Remote control: what messages that arrive ask for, and how often that may be.
 *
 * <pre>
 *   osc-receiver:  ReceivedMessage &gt; RemoteAddresses (RemoteWord) &gt; RemoteOrder, or a refusal in words
 * </pre>
 *
 * <p>Pure; nothing here listens or obeys. Start reading at RemoteWord: it is the table of all addresses.
 */
@NullMarked
package handspan.outside.osc.remote;

import org.jspecify.annotations.NullMarked;
