import type { Problem } from '@loamwright/science';

/** What a command has to say: as data for `--json`, as text for people. */
export interface Answer {
  readonly value: unknown;
  readonly text: string;
  /** Why nothing was done yet, beside the text; only with an exit code that is not 0. */
  readonly problems?: readonly Problem[] | undefined;
  /** Nothing is printed: another process has said it. */
  readonly quiet?: boolean | undefined;
  /** Exit code, where it is not 0: something was asked and wants an answer before anything is done. */
  readonly code?: ExitCode | undefined;
}

/** 0 fine, 1 failed, 2 bad input. */
export type ExitCode = 0 | 1 | 2;

/** Problems that no other input would mend: the machine, a file, or the daybook itself. */
const failures: ReadonlySet<string> = new Set([
  'folder-unusable',
  'settings-broken',
  'file-unreadable',
  'file-unwritable',
  'damaged',
  'busy',
  'full',
  'closed',
  'broken-chain',
  'no-solver',
  'solver-failed',
  'daybook-empty',
  'server-missing',
  'partner-broken',
  'partner-unreachable',
  'partner-untrusted',
  'fingerprint-differs',
  'no-certificate',
  'no-exchange',
  'server-failed',
]);

/** The exit code that a set of problems ends with. */
export function exitCodeOf(problems: readonly Problem[]): ExitCode {
  return problems.some(({ code }) => failures.has(code)) ? 1 : 2;
}
