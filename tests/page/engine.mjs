// The page's engine under node: what the tests ask it through.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";

// From a build folder of the preset page: the embedding function, JSON text in and out, as src/page/ask.ts calls it.
export async function startEngine(folder) {
  const createEngine = createRequire(import.meta.url)(resolve(folder, "engine.js"));
  const engine = await createEngine({ wasmBinary: readFileSync(join(folder, "engine.wasm")) });
  const ask = (request) => {
    const bytes = engine.lengthBytesUTF8(request);
    const text = engine._malloc(bytes + 1);
    engine.stringToUTF8(request, text, bytes + 1);
    const reply = engine._yardworth_answer(text, bytes);
    const told = engine.UTF8ToString(reply);
    engine._free(reply);
    engine._free(text);
    return told;
  };
  return { ask, heapBytes: () => engine.HEAP8?.length ?? 0 };
}
