import type { LogOptions } from '../log/options.ts';

/** Options of `loamwright daybook`; those of `log` say what a corrected entry should have said. */
export interface DaybookOptions extends LogOptions {
  readonly check?: boolean | undefined;
  readonly about?: string | undefined;
  readonly newest?: string | undefined;
  readonly all?: boolean | undefined;
  readonly amend?: string | undefined;
  readonly body?: string | undefined;
  readonly withdraw?: string | undefined;
  readonly why?: string | undefined;
  readonly show?: string | undefined;
  readonly forget?: boolean | undefined;
}
