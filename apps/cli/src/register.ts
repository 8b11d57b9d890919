import type { Outcome } from '@loamwright/science';
import type { MessageKey } from '@loamwright/words';
import type { Command } from 'commander';
import type { Answer } from './answer.ts';
import type { CommonOptions, Session } from './session.ts';

/** The work of one command in one run. */
export type Work = (session: Session) => Promise<Outcome<Answer>>;

/** What a group of commands registers itself with. */
export interface Register {
  /** A command under another, with the options that every command takes. */
  readonly under: (parent: Command, name: string, summary: MessageKey) => Command;
  readonly say: (key: MessageKey) => string;
  /** @param names whether the input is written under the names of the code, and problems are told with them. */
  readonly run: (options: CommonOptions, work: Work, names?: boolean) => Promise<void>;
}
