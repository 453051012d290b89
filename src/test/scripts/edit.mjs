// Holds what goes into the edit against readers that we did not write:
//   npm install webvtt-parser@2.2.0 smpte-timecode@1.3.6
//   node src/test/scripts/edit.mjs my-episode/out
// Captions are parsed by webvtt-parser (by the authors of the WebVTT standard's tests); the time codes of markers.csv are
// counted back to their frames by smpte-timecode, with the frames per second given as a second argument (25, 29.97 …).
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { createRequire } from "node:module";

const require = createRequire(join(process.cwd(), "package.json"));
const { WebVTTParser } = require("webvtt-parser");
const Timecode = require("smpte-timecode");

const [out, rate = "25"] = process.argv.slice(2);
let wrong = 0;
for (const file of readdirSync(join(out, "captions")).filter((name) => name.endsWith(".vtt"))) {
  const { cues, errors } = new WebVTTParser().parse(readFileSync(join(out, "captions", file), "utf8"), "subtitles/captions/descriptions");
  console.log(`${file}: ${cues.length} cues, ${errors.length} errors`);
  errors.forEach((error) => console.log(`  line ${error.line}: ${error.message}`));
  wrong += errors.length;
}
const rows = readFileSync(join(out, "markers.csv"), "utf8").trim().split("\n").slice(1);
const first = rows.map((row) => row.split(",")).map(([, , , code, frame]) => ({ code, frame: Number(frame) }));
const start = new Timecode(first[0].code, Number(rate), first[0].code.includes(";")).frameCount - first[0].frame;
for (const { code, frame } of first) {
  if (new Timecode(code, Number(rate), code.includes(";")).frameCount - start !== frame) {
    console.log(`  ${code} is not frame ${frame}`);
    wrong++;
  }
}
console.log(`markers.csv: ${rows.length} time codes`);
process.exit(wrong ? 1 : 0);
