package handspan.show.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.profile.ProfileFolder;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.HoldPurpose;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.SocketTimeoutException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An evening by wishes alone, on simulated instruments that run as fast as the machine can; no key, no toolkit. */
class GuideTest {
    @TempDir
    Path folder;

    private Evening evening;
    private Guide guide;

    @BeforeEach
    void begin() {
        evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast());
        guide = new Guide(evening, Showing.first(true));
    }

    @AfterEach
    void end() {
        evening.close();
    }

    private void until(BooleanSupplier happened) {
        Waits.until(happened, () -> evening.view().toString());
    }

    private Page page(Station station) {
        guide.fulfil(new Wish.Go(station));
        return guide.screen().page();
    }

    private static List<String> words(Page page) {
        List<String> words = new ArrayList<>();
        for (Block block : page.blocks()) {
            if (block instanceof Block.Words said) {
                words.add(said.text());
            } else if (block instanceof Block.Prompt prompt) {
                words.add(prompt.words());
            } else if (block instanceof Block.Ring ring) {
                words.add(ring.why());
            }
        }
        return words;
    }

    private static Offer offer(Page page, String words) {
        return page.offers().stream()
                .filter(offer -> offer.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private void openHall() {
        guide.fulfil(new Wish.Open("sim:hall"));
        until(() -> evening.view().arrival().instrument().isPresent()
                && evening.view().snapshot().filter(now -> now.readings() > 0).isPresent());
    }

    private void makeRoom() {
        openHall();
        guide.fulfil(new Wish.Say(Ask.ROOM_NAME, "barn"));
        until(() -> evening.view().snapshot().get().shape().isPresent());
        guide.fulfil(new Wish.Measure(HoldPurpose.FRESH));
        until(() -> evening.view().keeping().profile().isPresent());
    }

    /** Zone of the simulated hall's player: near 120, far 520 mm give or take the sensor's own 2 % and 10 mm. */
    @Test
    void anEveningGoesFromTheListOfInstrumentsToASavedRoom() {
        guide.begin();
        until(() -> evening.view().arrival().looked());
        Page arrive = page(Station.ARRIVE);
        assertTrue(arrive.blocks().stream()
                .anyMatch(block -> block instanceof Block.Table table
                        && table.rows().stream()
                                .anyMatch(row -> row.cells().get(0).equals("sim:hall"))));

        makeRoom();
        assertTrue(guide.hasUnsaved());
        assertEquals("barn", evening.view().keeping().profile().get().room().name());
        assertTrue(offer(page(Station.ROOM), "Save").isPossible());
        guide.fulfil(Wish.Plain.SAVE);
        until(() -> evening.view().keeping().rooms().contains("barn"));
        assertFalse(guide.hasUnsaved());
        assertFalse(offer(page(Station.ROOM), "Save").isPossible());
    }

    @Test
    void whileHoldsAreTakenThePromptSaysWhichHandAndTheRingFills() throws Exception {
        List<String> prompts = new ArrayList<>();
        List<Double> fills = new ArrayList<>();
        for (EveningView now : RehearsedHolds.views()) {
            for (Block block :
                    Pages.page(now, Showing.first(true).at(Station.ROOM)).blocks()) {
                if (block instanceof Block.Prompt prompt && !prompts.contains(prompt.words())) {
                    prompts.add(prompt.words());
                } else if (block instanceof Block.Ring ring) {
                    fills.add(ring.fill01());
                }
            }
        }
        assertTrue(prompts.toString().contains("pitch hand"), prompts::toString);
        assertTrue(fills.stream().anyMatch(fill -> fill > 0), fills::toString);
        assertTrue(fills.stream().anyMatch(fill -> fill == 0), fills::toString);
    }

    /** What comes out of the socket is read byte by byte: an address of Open Sound Control 1.0 begins with a slash. */
    @Test
    void playingStartsMutedAndOnlyTheWishForSoundOpensIt() throws Exception {
        try (DatagramSocket ear = new DatagramSocket(0, InetAddress.getLoopbackAddress())) {
            ear.setSoTimeout(20_000);
            guide.fulfil(new Wish.Say(Ask.TARGETS, "udp:127.0.0.1:" + ear.getLocalPort()));
            makeRoom();
            guide.fulfil(Wish.Plain.PLAY);
            until(() -> evening.view().sounding().setting().isPresent());
            assertTrue(evening.view().sounding().setting().get().muted());
            until(() -> stage().state().equals("muted"));
            assertTrue(offer(page(Station.PLAY), "Let sound through").isPossible());
            DatagramPacket packet = new DatagramPacket(new byte[2048], 2048);
            ear.receive(packet);
            String text = new String(packet.getData(), 0, packet.getLength(), StandardCharsets.ISO_8859_1);
            assertTrue(text.contains("/state") && text.contains("muted"), text);

            guide.fulfil(Wish.Plain.LET_SOUND);
            until(() -> stage().state().equals("playing"));
            guide.fulfil(Wish.Plain.SILENCE);
            until(() -> stage().state().equals("muted"));
            guide.fulfil(Wish.Plain.STOP_PLAYING);
            until(() -> evening.view().sounding().setting().isEmpty());
        }
    }

    private StageView stage() {
        return page(Station.PLAY).blocks().stream()
                .filter(Block.Stage.class::isInstance)
                .map(block -> ((Block.Stage) block).view())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aChangedTuningIsUnsavedAndARefusedOneIsToldInPlace() {
        makeRoom();
        guide.fulfil(Wish.Plain.SAVE);
        until(() -> !guide.hasUnsaved());
        guide.fulfil(new Wish.Say(Ask.SCALE, "dorian"));
        assertEquals(
                "dorian",
                evening.view()
                        .keeping()
                        .profile()
                        .get()
                        .tunings()
                        .get(0)
                        .scale()
                        .name());
        assertTrue(guide.hasUnsaved());
        guide.fulfil(new Wish.Say(Ask.LOW, "H9"));
        assertTrue(words(page(Station.NOTES)).toString().contains("H9"));
        guide.fulfil(new Wish.Say(Ask.CEILING_DB, "6"));
        assertTrue(words(page(Station.LEVEL)).toString().contains("at most 0"));
        until(() -> evening.view().thought().of().isPresent());
    }

    @Test
    void anUnknownSimulationIsToldInPlaceAndNothingOpens() {
        guide.fulfil(new Wish.Open("sim:nowhere"));
        until(() -> !evening.view().arrival().trouble().isEmpty());
        assertTrue(words(page(Station.ARRIVE)).toString().contains("sim:nowhere"));
        assertEquals(java.util.Optional.empty(), evening.view().snapshot());
    }

    @Test
    void withoutInstrumentOrRoomEachStationSaysWhatIsMissing() {
        EveningView nothing = evening.view();
        for (Station station : Station.values()) {
            Page page = Pages.page(nothing, Showing.first(false).at(station));
            assertEquals(station, page.station());
            page.offers().forEach(offer -> {
                boolean needs = offer.wish() == Wish.Plain.PLAY
                        || offer.wish() instanceof Wish.Measure
                        || offer.wish() == Wish.Plain.SAVE;
                assertEquals(needs, !offer.isPossible(), offer::toString);
            });
        }
    }

    /** A key that is hit by chance must not make sound: what does so needs a second key held down. */
    @Test
    void nothingThatSoundsIsUnderASingleKey() {
        makeRoom();
        guide.fulfil(Wish.Plain.PLAY);
        until(() -> evening.view().sounding().setting().isPresent());
        for (Station station : Station.values()) {
            for (Offer offer : page(station).offers()) {
                if (offer.weight() == Offer.Weight.SOUND) {
                    assertTrue(offer.key().startsWith("ctrl "), offer::toString);
                }
                assertTrue(
                        offer.weight() == Offer.Weight.SOUND
                                || (offer.wish() != Wish.Plain.LET_SOUND && offer.wish() != Wish.Plain.TRY_PATCH),
                        offer::toString);
            }
        }
    }

    /**
     * The last five bundles that a receiver gets say level 0 and hand 0: a float and an int of four zero bytes behind
     * their type tags (Open Sound Control 1.0, atomic types).
     */
    @Test
    void closingWhileItSoundsFadesFirst() throws Exception {
        try (DatagramSocket ear = new DatagramSocket(0, InetAddress.getLoopbackAddress())) {
            ear.setReceiveBufferSize(1 << 20);
            guide.fulfil(new Wish.Say(Ask.TARGETS, "udp:127.0.0.1:" + ear.getLocalPort()));
            makeRoom();
            guide.fulfil(Wish.Plain.PLAY);
            until(() -> evening.view().sounding().setting().isPresent());
            guide.fulfil(Wish.Plain.LET_SOUND);
            until(() -> stage().state().equals("playing"));
            guide.closes(() -> guide.end(() -> {}));
            guide.fulfil(Wish.Plain.CLOSE);
            assertTrue(
                    guide.screen().page().offers().stream().anyMatch(offer -> offer.wish() == Wish.Plain.CLOSE_ANYWAY));
            assertFalse(evening.view().sounding().setting().get().muted(), "asking must not close the sound");
            guide.fulfil(Wish.Plain.CLOSE_ANYWAY);
            until(() -> evening.view().snapshot().isEmpty());
            evening.close();
            assertEquals(0, lastInt(ear, "/level", ",f"));
        }
    }

    /** The four bytes of the last value at an address, whatever came before is read away. */
    private static int lastInt(DatagramSocket ear, String address, String tags) throws Exception {
        int last = -1;
        ear.setSoTimeout(300);
        DatagramPacket packet = new DatagramPacket(new byte[2048], 2048);
        try {
            while (true) {
                packet.setLength(2048);
                ear.receive(packet);
                String text = new String(packet.getData(), 0, packet.getLength(), StandardCharsets.ISO_8859_1);
                int at = text.indexOf(address + '\0');
                if (at >= 0) {
                    last = ByteBuffer.wrap(packet.getData()).getInt(text.indexOf(tags, at) + 4);
                }
            }
        } catch (SocketTimeoutException e) {
            return last;
        }
    }
}
