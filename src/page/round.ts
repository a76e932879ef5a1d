// A round in as many workers as there are: the holes are shared out, the longest first, and the library puts the parts
// together.

import type { Engines, Reply, Request } from "./engines";

export interface HazardFacts {
  kind: string;
  side?: string;
  from: number;
  to: number;
  right: number;
  words: string;
}

export interface HoleFacts {
  number: number;
  par: number;
  length: number;
  hazards: HazardFacts[];
}

// Each hole to whoever has least to do.
function shares(holes: HoleFacts[], workers: number): number[][] {
  const groups = Array.from({ length: Math.min(workers, holes.length) }, () => ({ length: 0, holes: [] as number[] }));
  for (const hole of [...holes].sort((a, b) => b.length - a.length)) {
    const least = groups.reduce((best, group) => (group.length < best.length ? group : best));
    least.length += hole.length;
    least.holes.push(hole.number);
  }
  return groups.map((group) => group.holes.sort((a, b) => a - b));
}

export async function askRound(
  engines: Engines, subject: string, request: Request, holes: HoleFacts[],
): Promise<Reply | null> {
  const questions = shares(holes, engines.rounds).map((numbers) => ({ ...request, holes: numbers }));
  const parts = await Promise.all(engines.askAll(subject, questions));
  const refused = parts.find((reply) => reply !== null && reply.status !== 0);
  if (refused) return refused;
  if (parts.some((reply) => reply === null)) return null;
  return engines.ask(subject, { ...request, parts: parts.map((reply) => reply?.part) });
}
