// The engine out of the page. bundle.mjs puts the compressed WebAssembly (element "engine") and the script of a worker
// (element "worker") into it.

// The text of an element that nobody else reads; it is not kept twice.
function textOutOf(id: string): string {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no element "${id}"`);
  const text = element.textContent ?? "";
  element.textContent = "";
  return text;
}

function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  const characters = atob(base64.trim());
  const bytes = new Uint8Array(characters.length);
  for (let i = 0; i < bytes.length; ++i) bytes[i] = characters.charCodeAt(i); // Uint8Array.from takes many times as long
  return bytes;
}

// Unpacked and compiled, once; the module can be posted to as many workers as are wanted.
export async function compileEngine(): Promise<WebAssembly.Module> {
  const packed = new Blob([bytesOf(textOutOf("engine"))]).stream();
  const unpacked = packed.pipeThrough(new DecompressionStream("deflate-raw"));
  return WebAssembly.compile(await new Response(unpacked).arrayBuffer());
}

let workerAddress: string | undefined;

// A worker with an engine of its own; worker.ts has what it takes and tells.
export function startWorker(engine: WebAssembly.Module): Worker {
  workerAddress ??= URL.createObjectURL(new Blob([textOutOf("worker")], { type: "text/javascript" }));
  const worker = new Worker(workerAddress);
  worker.postMessage(engine);
  return worker;
}
