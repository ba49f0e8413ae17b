package handspan.wiring.evening;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;

/**
 * Holds that are being taken.
 *
 * @param purpose what for
 * @param plan which
 * @param rules when a hold counts
 * @param instrument with which
 * @param air in which
 * @param afterEvent number of the last event before they began
 */
public record HoldTask(
        HoldPurpose purpose, CalibrationPlan plan, HoldRules rules, Instrument instrument, Air air, long afterEvent) {}
