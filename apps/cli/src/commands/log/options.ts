import type { TableOptions } from '../../temperature-file.ts';

/** Options of `loamwright log`. */
export interface LogOptions extends TableOptions {
  readonly when?: string | undefined;
  readonly where?: string | undefined;
  readonly depth?: string | undefined;
  readonly probe?: string | undefined;
  readonly air?: string | undefined;
  readonly squeeze?: string | undefined;
  readonly smell?: string | undefined;
  readonly height?: string | undefined;
  readonly note?: string | undefined;
  readonly asTyped?: boolean | undefined;
  readonly into?: string | undefined;
  readonly liquid?: string | undefined;
  readonly thickness?: string | undefined;
  readonly wall?: string | undefined;
  readonly roofed?: boolean | undefined;
  readonly from?: string | undefined;
  readonly out?: string | undefined;
}
