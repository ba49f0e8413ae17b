// Holds the scales and their spelling against a general-purpose music-theory library (tonal, MIT), in fifteen keys.
// Run as: node .ci/scales.mjs FOLDER-OF-THE-LIBRARY JAR
import { createRequire } from "node:module";
import { execFileSync } from "node:child_process";

const [folder, jar] = process.argv.slice(2);
const { Scale } = createRequire(folder + "/")("tonal");

// our name: the library's
const names = {
  "chromatic": null, // spelt by another custom there: only its notes are compared
  "major": "major", "natural-minor": "aeolian", "harmonic-minor": "harmonic minor", "melodic-minor": "melodic minor",
  "dorian": "dorian", "phrygian": "phrygian", "lydian": "lydian", "mixolydian": "mixolydian", "locrian": "locrian",
  "phrygian-dominant": "phrygian dominant", "double-harmonic-major": "double harmonic major",
  "hungarian-minor": "hungarian minor", "major-pentatonic": "major pentatonic", "minor-pentatonic": "minor pentatonic",
  "blues": "blues", "whole-tone": "whole tone", "octatonic": "diminished", "hirajoshi": "hirajoshi", "in-sen": "in-sen",
};
const major = [0, 2, 4, 5, 7, 9, 11];
const perfect = [1, 4, 5];
const cents = (interval) => {
  const [, number, quality] = /^(\d)([PMmAd])$/.exec(interval);
  const n = Number(number);
  const shift = { P: 0, M: 0, m: -1, A: 1, d: perfect.includes(n) ? -1 : -2 }[quality];
  return 100 * (major[n - 1] + shift);
};

let compared = 0;
let wrong = 0;
for (const key of ["C", "G", "D", "A", "E", "B", "F#", "C#", "F", "Bb", "Eb", "Ab", "Db", "Gb", "Cb"]) {
  const ours = JSON.parse(execFileSync("java", ["-jar", jar, "scales", "--key", key, "--json"], { encoding: "utf8" }));
  for (const scale of ours.scales.filter((s) => s.name in names)) {
    const theirs = Scale.get(`${key} ${names[scale.name] ?? scale.name}`);
    const sameSteps = theirs.intervals.map(cents).join(" ") === scale.stepsCents.join(" ");
    const sameNames = names[scale.name] === null || theirs.notes.join(" ") === scale.notes.join(" ");
    compared++;
    if (!sameSteps || !sameNames) {
      wrong++;
      console.error(`${key} ${scale.name}: ${scale.notes} (${scale.stepsCents}), there ${theirs.notes} (${theirs.intervals})`);
    }
  }
}
console.log(`${compared} scales in their keys compared, ${wrong} differ`);
process.exit(wrong > 0 || compared !== 15 * Object.keys(names).length ? 1 : 0);
