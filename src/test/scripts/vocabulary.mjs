// Writes the table of schema.org types that SchemaOrgVocabularyTest reads, from the types of the npm package schema-dts:
//   npm pack schema-dts@2.1.0 && tar xzf schema-dts-2.1.0.tgz
//   node src/test/scripts/vocabulary.mjs package > src/test/resources/org/misecue/publish/vocabulary.csv
// A row is a fact of the vocabulary: which type has which property and which kinds of value it takes.
import { readFileSync } from "node:fs";
import { join } from "node:path";

const OURS = ["Recipe", "HowToSection", "HowToStep", "HowToTool", "VideoObject", "Clip", "Person", "Organization"];

const folder = process.argv[2];
const { name, version } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
const source = readFileSync(join(folder, "dist", "schema.d.ts"), "utf8");

/** "Recipe" -> { parents: ["HowTo"], body: "..." }; a type without a Base of its own is told by its Leaf. */
function declared(type) {
  for (const form of [`${type}Base`, `${type}Leaf`]) {
    const found = source.match(new RegExp(`^(?:export )?interface ${form} extends ([^{]*)\\{\\n([\\s\\S]*?)^\\}`, "m"));
    if (found) {
      const parents = found[1].split(",").map((each) => each.trim())
        .filter((each) => each.endsWith("Base")).map((each) => each.slice(0, -"Base".length));
      return { parents, body: found[2] };
    }
  }
  throw new Error(`${type} is not in the vocabulary`);
}

const rows = [];
const done = new Set();
function write(type) {
  if (done.has(type)) return;
  done.add(type);
  const { parents, body } = declared(type);
  rows.push([type, "", parents.join(" "), ""]);
  for (const found of body.matchAll(/(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*)?"([A-Za-z]+)"\?: SchemaValue<([^,]+), "\2">;/g)) {
    const kinds = found[3].split("|").map((each) => each.trim()).filter((each) => each !== "IdReference");
    rows.push([type, found[2], kinds.join(" "), (found[1] ?? "").includes("@deprecated") ? "deprecated" : ""]);
  }
  parents.forEach(write);
}
OURS.forEach(write);

console.log(`# Facts of the schema.org vocabulary, from the npm package ${name} ${version} (Apache-2.0), by src/test/scripts/vocabulary.mjs.`);
console.log("# A row without a property names what a type is a kind of; any other, which values a property takes.");
console.log("type,property,values,status");
rows.forEach((row) => console.log(row.join(",")));
