// One question to an engine that has started: the embedding function over the engine's own memory (docs/embedding.md).

import type { Engine } from "engine";

// request and reply are JSON texts. Throws where memory is short or the engine has stopped.
export function ask(engine: Engine, request: string): string {
  const bytes = engine.lengthBytesUTF8(request);
  const text = engine._malloc(bytes + 1);
  if (text === 0) throw new Error("out of memory");
  try {
    engine.stringToUTF8(request, text, bytes + 1);
    const reply = engine._yardworth_answer(text, bytes);
    if (reply === 0) throw new Error("out of memory");
    try {
      return engine.UTF8ToString(reply);
    } finally {
      engine._free(reply);
    }
  } finally {
    engine._free(text);
  }
}
