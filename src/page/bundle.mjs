// Puts the page together: page.html with its style, its script, the engine and the notices of all that is inside, in one
// file that asks nobody for anything.
//
//   node bundle.mjs ENGINE_FOLDER OUTPUT
//
// In page.html a comment of one word says where each part goes: policy, style, notices, data, script. The same files in,
// the same bytes out.

import { createHash } from "node:crypto";
import { readFileSync, readdirSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { deflateRawSync } from "node:zlib";
import { build } from "esbuild";

const largest = 2_000_000; // bytes of the page

const here = dirname(fileURLToPath(import.meta.url));
const [engineFolder, output] = process.argv.slice(2).map((path) => resolve(path));

const read = (name) => readFileSync(join(here, name), "utf8");
const hashOf = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

// One script, and the packages that went into it.
async function bundled(entry) {
  const result = await build({
    entryPoints: [join(here, entry)],
    alias: { engine: join(engineFolder, "engine.js") },
    absWorkingDir: here,
    bundle: true,
    charset: "utf8",
    external: ["fs", "path", "crypto", "perf_hooks"], // asked for under node alone
    format: "iife",
    legalComments: "none", // notices have a place of their own
    loader: { ".yaml": "text", ".csv": "text" },
    logLevel: "warning",
    metafile: true,
    minify: true,
    target: "es2022",
    write: false,
  });
  const packages = Object.keys(result.metafile.inputs)
    .map((path) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1])
    .filter((name) => name !== undefined);
  return { text: result.outputFiles[0].text.trim(), packages };
}

function noticeOf(name) {
  const folder = join(here, "node_modules", name);
  const { version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (file === undefined) throw new Error(`${name} comes without its licence`);
  return `${name} ${version} (${license})\n\n${readFileSync(join(folder, file), "utf8").trim()}`;
}

function noticesOf(packages) {
  const own = `yardworth\n\n${readFileSync(join(here, "../../LICENSE"), "utf8").trim()}`;
  const names = [...new Set(packages)].sort();
  return [own, read("notices.txt").trim(), ...names.map(noticeOf)].join(`\n\n${"-".repeat(60)}\n\n`);
}

const escaped = (text) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

// The inside of a script or style element ends where its end tag is spelled, whatever that is part of.
function element(tag, attributes, inside) {
  if (/<\/(script|style)|<!--|<script/i.test(inside)) throw new Error(`a ${tag} of the page spells a tag of its own`);
  return `<${tag}${attributes}>${inside}</${tag}>`;
}

function policyOf(script, style) {
  const policy = [
    "default-src 'none'",
    `script-src ${hashOf(script)} 'wasm-unsafe-eval'`,
    `style-src ${hashOf(style)}`,
    "worker-src blob:",
    "img-src data: blob:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
}

// The case inside: nothing yet. "yardworth page" and the page itself put one there; < is written \u003c in it.
const noCase = '<script type="application/json" id="case">{}</script>';

function filled(page, parts) {
  let whole = page;
  for (const [name, part] of Object.entries(parts)) {
    const place = `<!-- ${name} -->`;
    if (whole.split(place).length !== 2) throw new Error(`page.html has no place, or more than one, for ${name}`);
    whole = whole.replace(place, () => part);
  }
  return whole;
}

const main = await bundled("main.ts");
const worker = await bundled("worker.ts");
const engine = deflateRawSync(readFileSync(join(engineFolder, "engine.wasm")), { level: 9 }).toString("base64");
const style = read("page.css").trim();

const page = filled(read("page.html"), {
  policy: policyOf(main.text, style),
  style: element("style", "", style),
  notices: escaped(noticesOf([...main.packages, ...worker.packages])),
  data: [
    noCase,
    element("script", ' type="text/plain" id="worker"', worker.text),
    element("script", ' type="text/plain" id="engine"', engine),
  ].join("\n"),
  script: element("script", "", main.text),
});
const bytes = Buffer.byteLength(page);
if (bytes > largest) throw new Error(`the page has ${bytes} bytes, more than ${largest}`);
// Whole or not at all.
writeFileSync(`${output}.part`, page);
renameSync(`${output}.part`, output);
console.log(`${output}: ${bytes} bytes`);
