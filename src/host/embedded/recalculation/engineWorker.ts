/** The engine in a worker of its own, so that the page stays quick while it counts. Started by `engineInWorker`. */
import init from "@ironcalc/wasm";
import type { EngineRequest } from "./engine";
import { ironCalcAnswer } from "./ironCalc";

/** A worker as its own code sees it; the compiler's library knows pages only. */
type Inside = { onmessage: ((event: { readonly data: EngineCall }) => void) | null; postMessage(answer: EngineReply): void };

export type EngineCall = { readonly call: number; readonly request: EngineRequest };
export type EngineReply = { readonly call: number } & ({ readonly answer: ReturnType<typeof ironCalcAnswer> } | { readonly fault: string });

const inside = globalThis as unknown as Inside;
const loaded = init();

inside.onmessage = ({ data: { call, request } }) => {
  loaded.then(() => inside.postMessage({ call, answer: ironCalcAnswer(request) })).catch((fault: unknown) =>
    inside.postMessage({ call, fault: fault instanceof Error ? fault.message : String(fault) }));
};
