package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.send.SendTarget;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomInWords;
import handspan.profile.RoomProfile;
import handspan.room.FitQuality;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.Zone;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.LatencyBudget;
import handspan.room.budget.NoteBudget;
import handspan.room.budget.VibratoBudget;
import handspan.room.calibrate.AimFit;
import java.util.ArrayList;
import java.util.List;

/** A room in short: for {@code rooms show} and for the end of a calibration. */
final class RoomSummary {
    private RoomSummary() {}

    static List<String> lines(RoomProfile profile) {
        Room room = profile.room();
        Tuning tuning = profile.tunings().get(0);
        Zone zone = room.pitch().zone();
        List<String> lines = new ArrayList<>();
        lines.add("room '" + room.name() + "', calibrated " + room.calibratedAt() + ", instrument '"
                + room.instrument().name() + "' revision " + room.instrument().revision());
        lines.addAll(RoomInWords.hands(room));
        profile.tunings().forEach(each -> lines.add("tuning " + RoomInWords.tuning(each, zone)));
        lines.addAll(RoomInWords.promises(room, tuning));
        FeelBudget feel = FeelBudget.of(room, tuning);
        LatencyBudget latency = LatencyBudget.of(room, feel);
        lines.add("feel: " + feel.words() + "; " + Figures.text(latency.totalMs(), 0) + " ms from hand to message; "
                + VibratoBudget.of(room, tuning).words());
        lines.addAll(LatencyView.lines("latency of a moving hand", latency));
        lines.add("sends to "
                + profile.send().targets().stream()
                        .map(SendTarget::text)
                        .reduce((a, b) -> a + ", " + b)
                        .orElse("nobody"));
        return lines;
    }

    private static ObjectNode aim(Room room) {
        ObjectNode node = Talk.node();
        JsonViews.number(node, "mm", room.aim().mm());
        node.put("reaches", room.aim().reaches());
        node.put("measured", room.aim().isMeasured());
        AimFit.of(room).filter(fit -> isOf(room, fit)).ifPresent(fit -> {
            JsonViews.number(node, "standardUncertaintyMm", fit.standardUncertaintyMm());
            JsonViews.number(node, "meanMm", fit.meanMm());
        });
        return node;
    }

    /** Whether a room's aim is the one that its own reaches tell: it may be older than they are, or written by hand. */
    private static boolean isOf(Room room, AimFit fit) {
        return fit.aim().equals(room.aim());
    }

    /** The pitch of the note that can be promised least, standard uncertainty in cents. */
    static double worstNoteCents(RoomProfile profile) {
        return NoteBudget.worst(
                        NoteBudget.of(profile.room().pitch(), profile.tunings().get(0)))
                .budget()
                .standardCents();
    }

    static ObjectNode node(RoomProfile profile) {
        Room room = profile.room();
        Tuning tuning = profile.tunings().get(0);
        Zone zone = room.pitch().zone();
        ObjectNode node = Talk.node();
        node.put("name", room.name());
        node.put("calibratedAt", room.calibratedAt());
        node.put("instrument", room.instrument().name());
        node.put("revision", room.instrument().revision());
        JsonViews.number(node, "ratePerS", room.ratePerS());
        node.set("pitch", hand(room.pitch()));
        HandSetup level = room.level();
        if (level == null) {
            node.putNull("level");
        } else {
            node.set("level", hand(level));
        }
        node.set("aim", aim(room));
        ArrayNode tunings = node.putArray("tunings");
        profile.tunings().forEach(each -> tunings.add(tuning(each, zone)));
        BudgetView.into(node, profile);
        JsonViews.number(node, "vibratoKept01", VibratoBudget.of(room, tuning).kept01());
        FeelBudget feel = FeelBudget.of(room, tuning);
        node.set("feel", FeelView.node(feel));
        node.set("latency", JsonViews.latency(LatencyBudget.of(room, feel)));
        ArrayNode targets = node.putArray("targets");
        profile.send().targets().forEach(target -> targets.add(target.text()));
        return node;
    }

    private static ObjectNode hand(HandSetup hand) {
        ObjectNode node = Talk.node();
        node.put("channel", hand.channel().channel());
        node.put("kind", hand.channel().kind().word());
        node.put("unit", hand.channel().unit().word());
        JsonViews.number(node, "nearMm", hand.zone().nearMm());
        JsonViews.number(node, "farMm", hand.zone().farMm());
        JsonViews.number(node, "nearUncertaintyMm", hand.zone().nearUncertaintyMm());
        JsonViews.number(node, "farUncertaintyMm", hand.zone().farUncertaintyMm());
        JsonViews.number(node, "noiseMm", hand.noiseMm());
        node.put("scaledTravel", hand.scaledTravel());
        FitQuality fit = hand.fit();
        if (fit != null) {
            node.set("fit", BudgetView.fit(fit));
        }
        return node;
    }

    static ObjectNode tuning(Tuning tuning, Zone zone) {
        ObjectNode node = Talk.node();
        node.put("name", tuning.name());
        node.put("scale", tuning.scale().name());
        node.put("temperament", tuning.temperament().word());
        node.put("key", tuning.tonic().name());
        node.put("low", tuning.lowName());
        node.put("high", tuning.highName());
        node.put("direction", tuning.direction().word());
        node.put("snap", tuning.snap().word());
        JsonViews.number(node, "strength01", tuning.snapping().strength01());
        JsonViews.number(node, "quickness", tuning.quickness().steps());
        node.put("transpose", tuning.transpose());
        JsonViews.number(node, "trimCents", tuning.trimCents());
        JsonViews.number(node, "a4Hz", tuning.reference().a4Hz());
        JsonViews.number(node, "warp", tuning.range().warp());
        JsonViews.number(node, "centsPerMm", tuning.centsPerMm(zone.lengthMm()));
        return node;
    }
}
