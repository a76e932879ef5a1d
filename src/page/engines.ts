// Questions to the library, in as many workers as the machine has cores and one more for what has to be quick. A newer
// question about the same thing drops the older one, and what works on that is stopped: another worker starts in 20 ms,
// where a round takes a second. Answers are kept, so that going back is instant; a worker that stops by itself is
// replaced, and says why. Those that nobody has asked anything for a while give their memory back.

import { afterRest } from "./fields";
import { compileEngine, startWorker } from "./start_engine";
import type { Told } from "./worker";

export interface Finding {
  severity: string;
  file: string;
  line: number;
  column: number;
  message: string;
}

export interface Reply {
  status: number;
  answer?: any;
  sentences?: string[];
  text?: string;
  pictures?: Record<string, string>;
  part?: unknown;
  message?: string;
  findings: Finding[];
  [member: string]: unknown;
}

export type Request = Record<string, unknown>;

interface Job {
  subject: string;
  turn: number;
  request: string;
  tries: number;
  done(reply: Reply | null): void;
}

interface Seat {
  worker: Worker | null; // starts with a question: the first answer of all does not wait for others to start
  quick: boolean;
  job: Job | null;
}

export interface Engines {
  rounds: number; // workers that a round is shared out among
  // Nothing where a newer question about the same subject came first.
  ask(subject: string, request: Request): Promise<Reply | null>;
  askQuickly(subject: string, request: Request): Promise<Reply | null>;
  // Several questions that belong together, about one subject.
  askAll(subject: string, requests: Request[]): Promise<Reply | null>[];
  // Nobody waits for it any more.
  drop(subject: string): void;
  onTrouble(hear: (words: string) => void): void;
}

interface Pool {
  module: WebAssembly.Module;
  seats: Seat[];
  waiting: { quick: Job[]; slow: Job[] };
  turns: Map<string, number>; // of each subject: the newest
  kept: Map<string, Reply>; // by request, the one used longest ago first
  hearers: ((words: string) => void)[];
  nextId: number;
  giveUpIdle(): void; // a while after the last question
}

const restAfter = 10_000; // milliseconds without a question
const mostKept = 80;
const mostTries = 2;
const mostWorkers = 8;

const isCurrent = (pool: Pool, job: Job): boolean => pool.turns.get(job.subject) === job.turn;
const waitingFor = (pool: Pool, seat: Seat): Job[] => (seat.quick ? pool.waiting.quick : pool.waiting.slow);

function remember(pool: Pool, request: string, reply: Reply): void {
  pool.kept.delete(request);
  pool.kept.set(request, reply);
  if (pool.kept.size > mostKept) pool.kept.delete(pool.kept.keys().next().value as string);
}

// An engine that worked on a round holds on to 30 MB. The quick one stays, since a slider cannot wait for another.
function giveUpIdle(seats: Seat[]): void {
  for (const seat of seats) {
    if (seat.quick || seat.job !== null) continue;
    seat.worker?.terminate();
    seat.worker = null;
  }
}

// The next question that nobody has asked anew since.
function next(pool: Pool, seat: Seat): void {
  if (seat.job !== null) return;
  const waiting = waitingFor(pool, seat);
  let job = waiting.shift();
  while (job !== undefined && !isCurrent(pool, job)) {
    job.done(null);
    job = waiting.shift();
  }
  if (job === undefined) {
    pool.giveUpIdle();
    return;
  }
  job.tries += 1;
  seat.job = job;
  seat.worker ??= seated(pool, seat);
  seat.worker.postMessage({ id: ++pool.nextId, request: job.request });
}

function finish(pool: Pool, seat: Seat, reply: Reply): void {
  const job = seat.job;
  seat.job = null;
  if (job !== null) {
    remember(pool, job.request, reply);
    job.done(isCurrent(pool, job) ? reply : null);
  }
  next(pool, seat);
}

// Another worker in its place. Returns what the one before was at.
function reseat(pool: Pool, seat: Seat): Job | null {
  const job = seat.job;
  seat.worker?.terminate();
  seat.worker = seated(pool, seat);
  seat.job = null;
  return job;
}

// Whoever works on an answer that nobody waits for goes on to the next question.
function stopStale(pool: Pool, seats: Seat[]): void {
  for (const seat of seats) {
    if (seat.job === null || isCurrent(pool, seat.job)) continue;
    reseat(pool, seat)?.done(null);
    next(pool, seat);
  }
}

// What stopped gets another worker, and the question another try.
function replace(pool: Pool, seat: Seat, why: string): void {
  const job = reseat(pool, seat);
  pool.hearers.forEach((hear) => hear(`What computes had stopped and was started again: ${why}`));
  if (job !== null && job.tries < mostTries && isCurrent(pool, job)) waitingFor(pool, seat).unshift(job);
  else job?.done({ status: 1, message: `It could not be worked out: ${why}`, findings: [] });
  next(pool, seat);
}

function seated(pool: Pool, seat: Seat): Worker {
  const worker = startWorker(pool.module);
  worker.onmessage = (event: MessageEvent<Told>) => {
    if (seat.worker !== worker) return;
    if ("failure" in event.data) replace(pool, seat, event.data.failure);
    else if ("reply" in event.data) finish(pool, seat, JSON.parse(event.data.reply) as Reply);
  };
  worker.onerror = (event) => {
    event.preventDefault();
    if (seat.worker === worker) replace(pool, seat, event.message);
  };
  return worker;
}

function newTurn(pool: Pool, subject: string): number {
  const turn = (pool.turns.get(subject) ?? 0) + 1;
  pool.turns.set(subject, turn);
  return turn;
}

function put(pool: Pool, subject: string, turn: number, asked: Request, quick: boolean): Promise<Reply | null> {
  const request = JSON.stringify(asked);
  const known = pool.kept.get(request);
  if (known !== undefined) {
    remember(pool, request, known);
    return Promise.resolve(known);
  }
  return new Promise((done) => {
    (quick ? pool.waiting.quick : pool.waiting.slow).push({ subject, turn, request, tries: 0, done });
    pool.seats.filter((seat) => seat.quick === quick).forEach((seat) => next(pool, seat));
  });
}

export async function startEngines(): Promise<Engines> {
  const rounds = Math.min(mostWorkers, Math.max(1, navigator.hardwareConcurrency));
  const pool: Pool = {
    module: await compileEngine(), seats: [], waiting: { quick: [], slow: [] }, turns: new Map(), kept: new Map(),
    hearers: [], nextId: 0, giveUpIdle: afterRest(restAfter, () => giveUpIdle(pool.seats)),
  };
  for (let i = 0; i <= rounds; ++i) {
    pool.seats.push({ worker: null, quick: i === 0, job: null });
  }
  // Quick questions are left to their end: to start anew would take as long.
  const askAll: Engines["askAll"] = (subject, requests) => {
    const turn = newTurn(pool, subject);
    const answers = requests.map((request) => put(pool, subject, turn, request, false));
    stopStale(pool, pool.seats.filter(({ quick }) => !quick));
    return answers;
  };
  return {
    rounds, askAll,
    ask: (subject, request) => askAll(subject, [request])[0] as Promise<Reply | null>,
    askQuickly: (subject, request) => put(pool, subject, newTurn(pool, subject), request, true),
    drop(subject) {
      newTurn(pool, subject);
      stopStale(pool, pool.seats);
    },
    onTrouble: (hear) => { pool.hearers.push(hear); },
  };
}
