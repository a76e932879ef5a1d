// The page's engine answers what the command and the library answer: the same code, compiled for another machine.
//
//   tests/page/run calls it, with YARDWORTH_PROGRAM, YARDWORTH_ANSWER (tests/page/answer.cpp) and YARDWORTH_PAGE, the
//   build folder of the preset page.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { startEngine } from "./engine.mjs";

// How far numbers may lie apart. Rounding differs in the last digits; where two clubs are as good as each other, either
// may be taken, and shares of clubs and what follows from them move a little, strokes hardly.
const strokesApart = 1e-9;
const sharesApart = 0.01;

const tree = fileURLToPath(new URL("../../", import.meta.url));
const { YARDWORTH_PROGRAM: program, YARDWORTH_ANSWER: answerProgram, YARDWORTH_PAGE: page } = process.env;
const textOf = (path) => readFileSync(join(tree, path), "utf8");
const engine = await startEngine(page);
const ask = (request) => JSON.parse(engine.ask(JSON.stringify(request)));
const plenty = { maxBuffer: 1 << 28 };

// A distribution of scores as chances by score: where it begins and ends depends on chances next to nothing.
const nextToNothing = 1e-9;
function byScore({ lowest, probabilities, ...others }) {
  const chances = probabilities.map((chance, i) => [String(lowest + i), chance]);
  return { ...others, scores: Object.fromEntries(chances.filter(([, chance]) => chance > nextToNothing)) };
}
const isDistribution = (value) => value !== null && typeof value === "object" && Array.isArray(value.probabilities);

// Shares of clubs, where one that is missing has none.
const withShares = (a, b) => Object.fromEntries(Object.keys(b).map((club) => [club, a[club] ?? 0]));

// Every difference between two JSON values, as words: texts, keys and lengths of lists, and numbers further apart than
// they may be.
function differences(a, b, path = "", key = "") {
  if (typeof a === "number" && typeof b === "number") {
    const allowed = /stroke/.test(key) ? strokesApart : sharesApart;
    return Math.abs(a - b) <= allowed * Math.max(1, Math.abs(b)) ? [] : [`${path}: ${a}, not ${b}`];
  }
  if (a === null || b === null || typeof a !== "object" || typeof b !== "object") {
    return a === b ? [] : [`${path}: ${JSON.stringify(a)}, not ${JSON.stringify(b)}`];
  }
  if (isDistribution(a) && isDistribution(b)) return differences(byScore(a), byScore(b), path, key);
  if (/share/.test(key) && !Array.isArray(a)) return differences({ ...a, ...withShares(a, b) }, { ...b, ...withShares(b, a) }, path);
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].flatMap((name) =>
    name in a && name in b
      ? differences(a[name], b[name], `${path}.${name}`, Array.isArray(a) ? key : name)
      : [`${path}.${name}: ${name in a ? "one too many" : "missing"}`],
  );
}

const players = readdirSync(join(tree, "courses/heron-ferry/members")).map((f) => `courses/heron-ferry/members/${f}`);
const courses = ["heron-ferry", "bare-scorecard", "marsh-end"].map((name) => `courses/${name}/course.yaml`);

test("there are eight members and three courses", () => {
  assert.equal(players.length, 8);
  for (const course of courses) assert.ok(textOf(course).length > 0);
});

for (const course of courses) {
  for (const player of players) {
    test(`gain of ${player} on ${course} is the command's`, () => {
      const reply = ask({ command: "gain", course: textOf(course), player: textOf(player), options: { driver: 20, irons: 6 } });
      assert.equal(reply.status, 0, JSON.stringify(reply.findings));
      const args = ["gain", "--course", course, "--player", player, "--driver", "+20", "--irons", "+6", "--format", "json"];
      const told = JSON.parse(execFileSync(program, args, { cwd: tree, ...plenty }));
      assert.deepEqual(differences(reply.answer, told), []);
    });
  }
}

// What the library itself replies, byte for byte.
function sameBytes(request) {
  const text = typeof request === "string" ? request : JSON.stringify(request);
  const reply = engine.ask(text);
  const told = execFileSync(answerProgram, { input: text, ...plenty }).toString();
  assert.ok(reply === told, `${reply.slice(0, 400)}\n, not\n${told.slice(0, 400)}`);
  return JSON.parse(reply);
}

const course = textOf("courses/heron-ferry/course.yaml");
const script = "<script>alert(1)</script>\u202e\u0000\"'&]]>";

const refusals = {
  "a course with faults": {
    command: "gain",
    course: course.replace("par: 4", "par: four").replace("number: 2", "number: 1e-400").replace("firmness: normal", "firmness: 1e400"),
    names: { course: "links.yaml" },
  },
  "a player with faults": { command: "check", player: "format: yardworth/player/1\nlabel: {}\nclubs: [{name: driver, carry: 1e-400}]\n" },
  "a file of lines that are no YAML": { command: "check", course: "\t- [}\n: : :\n\u0007" },
  "a request with faults": { command: "gian", course: 3, options: { driver: "far" }, holes: [0, 1.5], other: null },
  "options with faults": { command: "gain", options: { driver: 1e9, irons: 0.1, plan: "bset", tee: "midle", club: { spoon: 5 } } },
  "a request that is no JSON": '{"command": "gain",\n "course": }',
  "a number beyond all numbers": '{"command": "gain", "options": {"driver": 1e999}}',
  "a log with faults": { command: "bag", log: "club,carry_yd\ndriver,1e-400\ndriver,nan\n7-iron\n,,,\n" },
  "script in names": { command: "check", course: course.replace("Heron Ferry Municipal", "X").replace("par: 4", `par: ${script}`), names: { course: script } },
  "a binary file": { command: "check", course: "\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDR", player: "PK\u0003\u0004\u0014\u0000" },
};

for (const [what, request] of Object.entries(refusals)) {
  test(`${what}: refused in the same bytes`, () => assert.equal(sameBytes(request).status, 2));
}

for (const bracket of ["[", "{", "- ", "? "]) {
  test(`4 MiB of ${JSON.stringify(bracket)} as a course: refused in the same bytes`, () => {
    const text = bracket.repeat((4 << 20) / bracket.length);
    assert.equal(sameBytes({ command: "check", course: text }).status, 2);
  });
}

test("4 MiB of brackets as a request: refused in the same bytes", () => {
  assert.equal(sameBytes("[".repeat(4 << 20)).status, 2);
});

test("after all that the engine still answers", () => {
  assert.equal(ask({ command: "gain", holes: [1] }).status, 0);
});
