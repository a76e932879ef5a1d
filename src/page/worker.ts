// What runs in a worker: one engine. The page posts the compiled WebAssembly.Module once, then {id, request}, request
// being a JSON text for the embedding function (docs/embedding.md). The worker posts {ready: true} when the engine has
// started, and {id, reply} for each request, in the order in which they came. What it cannot do it says as {id, failure}
// or, before any request, {failure}; it is then of no more use, and another one has to be started (start_engine.ts).

import createEngine, { type Engine } from "engine";
import { ask } from "./ask";

export interface Asked {
  id: number;
  request: string;
}

export type Told = { ready: true } | { id: number; reply: string } | { id?: number; failure: string };

const tell = (told: Told): void => self.postMessage(told);

function said(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

let engine: Promise<Engine> | undefined;

function start(module: WebAssembly.Module): Promise<Engine> {
  return createEngine({
    instantiateWasm(imports, done) {
      WebAssembly.instantiate(module, imports).then(
        (instance) => done(instance, module),
        (error: unknown) => tell({ failure: said(error) }),
      );
      return {};
    },
    print() {},
    printErr() {},
  });
}

async function answer(asked: Asked): Promise<void> {
  try {
    if (engine === undefined) throw new Error("a request came before the engine");
    tell({ id: asked.id, reply: ask(await engine, asked.request) });
  } catch (error) {
    tell({ id: asked.id, failure: said(error) });
  }
}

self.onmessage = (event: MessageEvent<WebAssembly.Module | Asked>): void => {
  if (!(event.data instanceof WebAssembly.Module)) {
    void answer(event.data);
    return;
  }
  engine = start(event.data);
  engine.then(
    () => tell({ ready: true }),
    (error: unknown) => tell({ failure: said(error) }),
  );
};
