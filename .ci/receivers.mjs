// Plays a few seconds to receivers that nobody here wrote, and holds what they have decoded against the numbers of the
// frames: a command-line receiver for Open Sound Control (Debian's liblo-tools, LGPL-2.1+) and a library for Node (osc,
// MIT), over UDP, over TCP with the length before each packet, and over TCP with SLIP.
// Run as: node .ci/receivers.mjs FOLDER-OF-THE-LIBRARY JAR TEST-CLASSES
import { createRequire } from "node:module";
import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { readFileSync } from "node:fs";

const [folder, jar, tests] = process.argv.slice(2);
const osc = createRequire(folder + "/")("osc");
const SECONDS = "4";
const FIRST_PORT = 40000 + (process.pid % 1000) * 10;
const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

// each receiver: a list of messages {address, types, values}, in the order in which they came
const receivers = [];
let nextPort = FIRST_PORT;
const receiver = (name, packing, way, exact) => {
  const one = { name, port: nextPort++, packing, way, exact, heard: [], ends: [] };
  receivers.push(one);
  return one;
};
const keep = (one) => (packet) => {
  for (const part of packet.packets ?? [packet]) {
    one.heard.push({ address: part.address, types: part.args.map((a) => a.type).join(""), values: part.args.map((a) => a.value) });
  }
};

// the Node library: 32-bit floats come as the doubles they are, so that they can be compared exactly
const metadata = { metadata: true };
const udp = receiver("library, udp, bundles", "bundled", "udp", true);
const udpPort = new osc.UDPPort({ localAddress: "127.0.0.1", localPort: udp.port, ...metadata });
udpPort.on("osc", keep(udp));
udpPort.open();
udp.ends.push(() => udpPort.close());

const serve = (one, onSocket) => {
  const server = createServer(onSocket).listen(one.port, "127.0.0.1");
  one.ends.push(() => server.close());
};
const slip = receiver("library, tcp-slip, bundles", "bundled", "tcp-slip", true);
serve(slip, (socket) => new osc.TCPSocketPort({ socket, ...metadata }).on("osc", keep(slip)));

// that library knows no lengths: they are taken off here, its decoder reads the packets
const length = receiver("library's decoder, tcp, bundles", "bundled", "tcp", true);
serve(length, (socket) => {
  let rest = Buffer.alloc(0);
  socket.on("data", (data) => {
    rest = Buffer.concat([rest, data]);
    while (rest.length >= 4 && rest.length >= 4 + rest.readInt32BE(0)) {
      const end = 4 + rest.readInt32BE(0);
      keep(length)(osc.readPacket(new Uint8Array(rest.subarray(4, end)), metadata));
      rest = rest.subarray(end);
    }
  });
});

// the command-line receiver prints six decimals; over a stream it finds out the framing by itself, but knows SLIP only
// by a message at its beginning, not by a bundle
const texts = [];
const dump = (one, scheme) => {
  const text = { one, out: "" };
  texts.push(text);
  const process = spawn("oscdump", ["-L", `osc.${scheme}://:${one.port}/`], { stdio: ["ignore", "pipe", "inherit"] });
  process.stdout.on("data", (data) => (text.out += data));
  one.ends.push(() => process.kill());
};
dump(receiver("command line, udp, bundles", "bundled", "udp", false), "udp");
dump(receiver("command line, udp, separate", "separate", "udp", false), "udp");
dump(receiver("command line, tcp, bundles", "bundled", "tcp", false), "tcp");
dump(receiver("command line, tcp-slip, separate", "separate", "tcp-slip", false), "tcp");
const parse = (text) => {
  for (const line of text.out.split("\n").filter((l) => l)) {
    const [, address, types, ...values] = line.split(" ");
    text.one.heard.push({ address, types, values: values.map((v, i) => (types[i] === "s" ? v.replaceAll('"', "") : Number(v))) });
  }
};

await pause(700);
const targets = receivers.map((r) => `${r.packing}=${r.way}:127.0.0.1:${r.port}`);
const file = folder + "/frames.jsonl";
const player = spawn("java", ["-cp", `${jar}:${tests}`, "handspan.wiring.ForeignEars", file, SECONDS, ...targets], { stdio: ["ignore", "inherit", "inherit"] });
const code = await new Promise((resolve) => player.on("exit", resolve));
await pause(500);
receivers.forEach((r) => r.ends.forEach((end) => end()));
texts.forEach(parse);

const [{ name }, ...frames] = readFileSync(file, "utf8").trim().split("\n").map((l) => JSON.parse(l));
const f = Math.fround;
// what the README's table says of each frame
const messages = (t) => [
  { address: `/${name}/pitch`, types: "f", values: [f(t.pitchHz)] },
  { address: `/${name}/note`, types: "if", values: [t.key, f(t.cents)] },
  { address: `/${name}/degree`, types: "ii", values: [t.degree, t.octave] },
  { address: `/${name}/level`, types: "f", values: [f(t.gain01)] },
  { address: `/${name}/hand`, types: "i", values: [t.hand ? 1 : 0] },
  { address: `/${name}/place`, types: "ff", values: [f(t.pitchPlace01), f(t.levelPlace01)] },
  { address: `/${name}/state`, types: "s", values: [t.state] },
];
const equal = (exact) => (a, b) => a === b || (!exact && typeof a === "number" && Math.abs(a - b) <= 5.0001e-7);
const same = (one, heard, told) =>
  heard !== undefined && heard.address === told.address && heard.types === told.types &&
  heard.values.length === told.values.length && told.values.every((v, i) => equal(one.exact)(v, heard.values[i]));

let wrong = code === 0 ? 0 : 1;
for (const one of receivers) {
  const datagrams = one.way === "udp";
  let at = 0;
  let met = 0;
  let values = 0;
  const says = (told) => {
    if (!same(one, one.heard[at], told)) return false;
    at++;
    values += told.values.length;
    return true;
  };
  for (const frame of frames) {
    const silent = !frame.hand && frame.gain01 === 0;
    const twice = one.packing === "separate" && silent;
    const all = messages(frame);
    const from = [at, values];
    const isWhole = all.every((told) => {
      const isState = told.types === "s";
      if (isState && datagrams && !frame.withState) return true;
      const said = says(told);
      if (said && twice) says(told);
      // over a stream the state of a frame that was left out goes along with the next one
      return said || (isState && !datagrams);
    });
    if (isWhole) met++;
    else [at, values] = from;
  }
  const all = met === frames.length;
  const good = at === one.heard.length && met > 0.9 * frames.length && (all || !datagrams);
  if (!good) {
    wrong++;
    console.error(`${one.name}: message ${at} of ${one.heard.length} fits no frame:`, one.heard[at], `(${met} of ${frames.length} frames met)`);
  }
  console.log(`${one.name}: ${met} of ${frames.length} frames, ${at} messages, ${values} values, ${one.exact ? "each float exact" : "to the six decimals printed"}`);
}
const played = frames.filter((t) => t.hand && t.gain01 > 0).length;
console.log(`${played} frames sounded, the last is ${frames.at(-1).gain01 === 0 && !frames.at(-1).hand ? "silent" : "not silent"}`);
if (played < 100 || frames.at(-1).gain01 !== 0) wrong++;
process.exit(wrong > 0 ? 1 : 0);
