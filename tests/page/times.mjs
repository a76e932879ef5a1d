// How long the page's engine takes, beside the library on this machine; prints numbers and asserts nothing.
//
//   node tests/page/times.mjs, with YARDWORTH_ANSWER and YARDWORTH_PAGE as answers_test.mjs has them.
//
// Times are of the processor, in milliseconds, the least of several, so that other work on the machine counts little.

import { execFileSync } from "node:child_process";
import { startEngine } from "./engine.mjs";

const { YARDWORTH_ANSWER: answerProgram, YARDWORTH_PAGE: page } = process.env;
const repetitions = 5;

const spent = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

async function least(work) {
  let best = Infinity;
  for (let i = 0; i < repetitions; ++i) {
    const before = spent();
    await work(i);
    best = Math.min(best, spent() - before);
  }
  return best;
}

// Of a program: what the shell says that it took.
function leastOfProgram(request) {
  let best = Infinity;
  for (let i = 0; i < repetitions; ++i) {
    const script = `TIMEFORMAT='%U %S'; { time "$0" >/dev/null; } 2>&1`;
    const said = execFileSync("bash", ["-c", script, answerProgram], { input: request }).toString();
    const [user, system] = said.trim().split(/\s+/).map(Number);
    best = Math.min(best, 1000 * (user + system));
  }
  return best;
}

const questions = {
  "check of the built-in course": { command: "check" },
  "one hole, habit": { command: "gain", holes: [3], options: { plan: "habit" } },
  "one hole, both plans": { command: "gain", holes: [3], options: {} },
  "one hole drawn": { command: "strategy", holes: [3], options: { pictures: true } },
  "one hole drawn as the page asks": {
    command: "strategy", holes: [3], options: { driver: 20, irons: 6, tee_shot_alone: true, pictures: true },
  },
  "the round, habit": { command: "gain", options: { plan: "habit" } },
  "the round, both plans": { command: "gain", options: {} },
  "a strike": { command: "delivery", options: { attack_deg: -1, to: { attack_deg: 2 } } },
  "a lesson sheet": { command: "report", options: {} },
};

const started = await least(async () => void (await startEngine(page)));
console.log(`start of the engine: ${started.toFixed(0)} ms`);

const engine = await startEngine(page);
for (const [what, question] of Object.entries(questions)) {
  // Each time a little different, as a slider would ask.
  const asked = (i) => {
    const driver = question.options && question.command !== "delivery" ? { driver: 20 + i, threads: 1 } : {};
    return JSON.stringify({ ...question, options: { ...question.options, ...driver } });
  };
  const first = spent();
  engine.ask(asked(0));
  const firstTime = spent() - first;
  const again = await least((i) => engine.ask(asked(i + 1)));
  const native = leastOfProgram(asked(1));
  const ratio = native > 0 ? (again / native).toFixed(2) : "-";
  console.log(`${what}: first ${firstTime.toFixed(0)} ms, then ${again.toFixed(0)} ms; the library ${native.toFixed(0)} ms; ratio ${ratio}`);
}
console.log(`memory of the engine: ${(engine.heapBytes() / 1e6).toFixed(1)} MB`);
