import type { Keeping } from '@loamwright/daybook';

/** Lets one step of storage fail as if the medium were full. */
export interface Fault {
  /** Steps still to go before the failure; Infinity: none will fail. */
  stepsLeft: number;
  /** How many steps have failed. */
  failed: number;
}

/** What the contract needs to try a keeping: its medium, and hands to tamper with it. */
export interface KeepingKit {
  /** Opens the keeping on this kit's medium; each call as another process or tab would. */
  open(options?: { readonly wait_ms?: number }): Promise<Keeping>;
  /** As `open`, with a medium that fails when `fault` says so. */
  openFailing(fault: Fault): Promise<Keeping>;
  /** Changes the stored text of the record at a position, which was kept alone, without changing its length. */
  rewriteRecord(position: number, change: (text: string) => string): Promise<void>;
  rewriteAttachment(hash: string, bytes: Uint8Array): Promise<void>;
  loseAttachment(hash: string): Promise<void>;
  /** Holds the right to write, as another process or tab would; gives back how to let go. */
  holdLock(): Promise<() => Promise<void>>;
  dispose(): Promise<void>;
}

export type MakeKit = () => Promise<KeepingKit>;

export function noFault(): Fault {
  return { stepsLeft: Number.POSITIVE_INFINITY, failed: 0 };
}

/** Whether the step about to be done shall fail. */
export function failsNow(fault: Fault): boolean {
  fault.stepsLeft -= 1;
  if (fault.stepsLeft !== 0) return false;
  fault.failed += 1;
  return true;
}

/** The code of the KeepingError a promise rejects with; the message of another error; `resolved` if it doesn't reject. */
export async function rejection(promise: Promise<unknown>): Promise<string> {
  try {
    await promise;
    return 'resolved';
  } catch (error) {
    if (error instanceof Error && 'code' in error && typeof error.code === 'string') return error.code;
    return error instanceof Error ? error.message : String(error);
  }
}
