// The engine's glue, which Emscripten writes when it links (engine.js beside engine.wasm in the build folder).
declare module "engine" {
  export interface Engine {
    _yardworth_answer(request: number, bytes: number): number;
    _malloc(bytes: number): number;
    _free(address: number): void;
    UTF8ToString(address: number): string;
    stringToUTF8(text: string, address: number, bytes: number): void;
    lengthBytesUTF8(text: string): number;
  }
  export interface EngineOptions {
    wasmBinary?: Uint8Array;
    instantiateWasm?: (
      imports: WebAssembly.Imports,
      done: (instance: WebAssembly.Instance, module: WebAssembly.Module) => void,
    ) => object;
    print?: (line: string) => void;
    printErr?: (line: string) => void;
    onAbort?: (what: unknown) => void;
  }
  export default function createEngine(options: EngineOptions): Promise<Engine>;
}
