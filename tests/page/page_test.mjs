// The page as a file: what it may do, what stands in it, and that it comes out the same each time. tests/browser opens it.
//
//   As answers_test.mjs, with the page itself in the folder YARDWORTH_PAGE.

import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, test } from "node:test";
import { fileURLToPath } from "node:url";

const tree = fileURLToPath(new URL("../../", import.meta.url));
const { YARDWORTH_PROGRAM: program, YARDWORTH_PAGE: folder } = process.env;
const file = join(folder, "yardworth.html");
const page = readFileSync(file, "utf8");
const scratch = mkdtempSync(join(tmpdir(), "yardworth-page-"));
after(() => rmSync(scratch, { recursive: true }));

const hashOf = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
const insideOf = (opens, closes) => page.split(opens)[1].split(closes)[0];

test("the page has less than 2 MB", () => assert.ok(Buffer.byteLength(page) < 2_000_000));

test("the page comes out the same each time", () => {
  const again = join(scratch, "again.html");
  execFileSync("node", [join(tree, "src/page/bundle.mjs"), folder, again]);
  assert.ok(readFileSync(again, "utf8") === page);
});

test("the page may run its own script and style, by their hashes, and fetches nothing", () => {
  const policy = insideOf('<meta http-equiv="Content-Security-Policy" content="', '">').split("; ");
  assert.equal(policy[0], "default-src 'none'");
  const script = page.slice(page.lastIndexOf("<script>") + "<script>".length, page.lastIndexOf("</script>"));
  assert.ok(policy.includes(`script-src ${hashOf(script)} 'wasm-unsafe-eval'`), policy.join("; "));
  assert.ok(policy.some((part) => part.startsWith(`style-src ${hashOf(insideOf("<style>", "</style>"))}`)));
  assert.ok(!policy.some((part) => /https?:|\*|unsafe-inline|unsafe-eval'? *$/.test(part.replace("'wasm-unsafe-eval'", ""))));
  assert.doesNotMatch(page, /<(script|link|img|iframe|object|embed)[^>]*\s(src|href|data)\s*=\s*["']?(https?:)?\/\//i);
});

test("the page names the licence of all that is inside", () => {
  const names = ["yardworth", "Eigen", "Boost", "LLVM", "yaml-cpp", "{fmt}", "JSON for Modern C++", "fast_float", "Emscripten", "musl"];
  for (const name of names) assert.ok(page.includes(name), name);
});

test("the command page puts a case into it, and touches nothing else", () => {
  const label = `</script><script>alert(1)</script><!-- \u202e "'&]]>`;
  const player = join(scratch, "player.yaml");
  writeFileSync(player, `format: yardworth/player/1\nlabel: ${JSON.stringify(label)}\nhandicap_index: 18\nclubs:\n  - {club: driver, carry: 190}\n`);
  const copy = join(scratch, "copy.html");
  const told = spawnSync(program, ["page", "--player", player, "--page", file, "--output", copy], { encoding: "utf8" });
  assert.equal(told.status, 0, told.stderr);
  const lines = page.split("\n");
  const copied = readFileSync(copy, "utf8").split("\n");
  assert.equal(copied.length, lines.length);
  const moved = lines.flatMap((line, i) => (line === copied[i] ? [] : [i]));
  assert.equal(moved.length, 1);
  const opens = '<script type="application/json" id="case">';
  assert.equal(lines[moved[0]], `${opens}{}</script>`);
  const inside = copied[moved[0]].slice(opens.length, -"</script>".length);
  assert.ok(!inside.includes("<"));
  assert.equal(JSON.parse(inside).player, readFileSync(player, "utf8"));
});
