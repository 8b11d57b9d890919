// The thread in which calculations run. HiGHS is loaded once, before the first of them.
import { parentPort } from 'node:worker_threads';
import { highsSolver } from '@loamwright/science';
import loadHighs from 'highs';
import { work } from './work.ts';

/** What the thread is asked. */
export interface Job {
  readonly id: string;
  readonly body: Uint8Array;
}

const port = parentPort;
if (port === null) throw new Error('This file runs in a thread of the server.');
const solver = highsSolver(await loadHighs());
port.on('message', ({ id, body }: Job) => port.postMessage(work(id, body, solver)));
