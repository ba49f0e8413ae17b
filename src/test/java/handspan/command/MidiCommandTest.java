package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import handspan.MidiEar;
import handspan.Program;
import handspan.Waits;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class MidiCommandTest {
    @TempDir
    Path folder;

    @Test
    void portsListsMidiOutputsByTheNamesThatTargetsHave() {
        Cli cli = Cli.run("ports", "--midi", "--json");
        assertEquals(0, cli.exitCode());
        JsonNode outputs = cli.last().get("midiOutputs");
        assertTrue(outputs.isArray());
        for (JsonNode output : outputs) {
            assertTrue(output.get("name").isTextual()
                    && output.get("description").isTextual()
                    && output.get("vendor").isTextual());
            assertTrue(cli.err().contains("midi:" + output.get("name").asText()), cli.err());
        }
    }

    @Test
    void aTakeBecomesAMidiFileAsFastAsTheMachineCan() throws Exception {
        Path take = folder.resolve("night.take");
        assertEquals(
                0,
                Cli.run("record", "sim:hall", "--out", take.toString(), "--seconds", "8", "--fast")
                        .exitCode());
        Path file = folder.resolve("night.mid");
        Cli cli = Cli.run(
                "play",
                "take:" + take,
                "--room",
                "saltmill-hall",
                "--profiles",
                "profiles",
                "--go",
                "--fast",
                "--midi-file",
                file.toString(),
                "--json");
        assertEquals(0, cli.exitCode(), cli.err());
        JsonNode targets = cli.last().get("targets");
        JsonNode written = targets.get(targets.size() - 1);
        assertEquals("midi-file:" + file, written.get("target").asText());
        assertTrue(written.get("sent").asLong() > 500, written + "");
        Sequence sequence = MidiSystem.getSequence(file.toFile());
        // the board's boot of 1 s is in the take, and the fade at its end follows it
        assertEquals(8, sequence.getMicrosecondLength() / 1e6, 2);
        assertTrue(sequence.getTracks()[0].size() > 300, sequence.getTracks()[0].size() + " events");
    }

    /** 143 is 128 + 15, the number of SIGTERM (POSIX). */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aMidiFileIsWrittenWhenTheProgramIsToldToEnd() throws Exception {
        Path file = folder.resolve("told.mid");
        String words = "play sim:hall --room saltmill-hall --profiles profiles --go --midi-file " + file;
        try (Program program = Program.start(folder, words.split(" ", -1))) {
            // a note name and cents are shown once it sounds
            Waits.until(() -> program.out().contains(" cents "), program::words);
            program.signal("TERM");
            assertEquals(143, program.await(), program.words());
        }
        Track track = MidiSystem.getSequence(file.toFile()).getTracks()[0];
        MidiEar ear = new MidiEar(1, false);
        for (int i = 0; i < track.size(); i++) {
            if (track.get(i).getMessage() instanceof ShortMessage message) {
                ear.send(message.getStatus(), message.getData1(), message.getData2());
            }
        }
        assertTrue(ear.notesBegun() > 0);
        assertEquals(0, ear.notes());
        assertEquals(0, ear.expression());
    }

    @Test
    void aPlaceWhereNoFileCanBeIsAnError() throws Exception {
        Path noFolder = Files.createFile(folder.resolve("file"));
        Cli cli = Cli.run(
                "play",
                "sim:hall",
                "--room",
                "saltmill-hall",
                "--profiles",
                "profiles",
                "--seconds",
                "1",
                "--fast",
                "--midi-file",
                noFolder.resolve("x.mid").toString());
        assertEquals(4, cli.exitCode());
        assertTrue(cli.err().contains("MIDI file") && cli.err().contains("name another place"), cli.err());
    }
}
