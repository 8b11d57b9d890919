import { KeepingError } from '@loamwright/daybook';
import { createExchange, type Exchange, type Taken } from '../exchange.ts';
import { holding } from './entries.ts';
import { createMemoryKeeping, type MemoryKeeping } from './memory-keeping.ts';

/** What the simulated network and devices have done: to see that a run did something. */
export interface Tally {
  delivered: number;
  lost: number;
  repeated: number;
  reordered: number;
  crashed: number;
  refused: number;
  kept: number;
}

/** A connection between two devices; the first opened it and begins. */
export type Connection = readonly [opener: number, other: number];

/** Messages on their way in one direction of a connection, as text. */
type Line = string[];

interface Device {
  readonly keeping: MemoryKeeping;
  /** Its side of every connection; lost in a crash. */
  readonly exchanges: Map<string, Exchange>;
}

/** Several devices in one process, and messages that the test delivers, loses, repeats or reorders. */
export interface Network {
  readonly keepings: readonly MemoryKeeping[];
  readonly tally: Tally;
  begin(on: Connection): Promise<void>;
  /** Delivers the `pick`-th message under way, to the opener or from it, if there is one. */
  deliver(on: Connection, toOpener: boolean, pick: number): Promise<void>;
  lose(on: Connection, toOpener: boolean, pick: number): void;
  repeat(on: Connection, toOpener: boolean, pick: number): void;
  /** The device forgets everything that is not in its keeping, and what was under way to and from it is lost. */
  crash(device: number): void;
  /** One whole exchange without faults. Gives back how many messages it took. */
  settle(on: Connection): Promise<number>;
}

/** More messages than one exchange between two simulated devices may need. */
const mostMessages = 200;

export function createNetwork(devices: number): Network {
  const all: readonly Device[] = Array.from({ length: devices }, () => ({
    keeping: createMemoryKeeping(),
    exchanges: new Map(),
  }));
  const lines = new Map<string, Line>();
  const tally: Tally = { delivered: 0, lost: 0, repeated: 0, reordered: 0, crashed: 0, refused: 0, kept: 0 };

  const deviceAt = (index: number): Device => {
    const device = all[index];
    if (device === undefined) throw new RangeError(`no device ${index}`);
    return device;
  };
  const lineOf = ([opener, other]: Connection, toOpener: boolean): Line => {
    const name = `${opener}-${other} ${toOpener ? 'back' : 'out'}`;
    const line = lines.get(name) ?? [];
    lines.set(name, line);
    return line;
  };
  const sideOf = ([opener, other]: Connection, ofOpener: boolean): Exchange => {
    const { exchanges, keeping } = deviceAt(ofOpener ? opener : other);
    const name = `${opener}-${other}`;
    const exchange = exchanges.get(name) ?? createExchange(keeping, holding);
    exchanges.set(name, exchange);
    return exchange;
  };
  const begin = async (on: Connection): Promise<void> => {
    for (const message of await sideOf(on, true).begin()) lineOf(on, false).push(JSON.stringify(message));
  };
  const deliver = async (on: Connection, toOpener: boolean, pick: number): Promise<void> => {
    const line = lineOf(on, toOpener);
    const at = line.length === 0 ? 0 : pick % line.length;
    const [message] = line.splice(at, 1);
    if (message === undefined) return;
    if (at > 0) tally.reordered += 1;
    tally.delivered += 1;
    let taken: Taken;
    try {
      taken = await sideOf(on, toOpener).receive(JSON.parse(message));
    } catch (error) {
      // Its keeping is full: the exchange is over until someone begins again.
      if (!(error instanceof KeepingError)) throw error;
      tally.refused += 1;
      return;
    }
    tally.kept += taken.kept;
    for await (const answer of taken.send) lineOf(on, !toOpener).push(JSON.stringify(answer));
  };

  return {
    keepings: all.map(({ keeping }) => keeping),
    tally,
    begin,
    deliver,
    lose: (on, toOpener, pick) => {
      const line = lineOf(on, toOpener);
      if (line.length === 0) return;
      line.splice(pick % line.length, 1);
      tally.lost += 1;
    },
    repeat: (on, toOpener, pick) => {
      const line = lineOf(on, toOpener);
      const message = line[pick % Math.max(1, line.length)];
      if (message === undefined) return;
      line.push(message);
      tally.repeated += 1;
    },
    crash: (device) => {
      deviceAt(device).exchanges.clear();
      for (const [name, line] of lines) if (name.split(/[- ]/u).includes(String(device))) line.length = 0;
      tally.crashed += 1;
    },
    settle: async (on) => {
      const [out, back] = [lineOf(on, false), lineOf(on, true)];
      out.length = 0;
      back.length = 0;
      await begin(on);
      let messages = 0;
      while (out.length + back.length > 0) {
        messages += 1;
        if (messages > mostMessages) throw new Error('the exchange does not come to an end');
        await deliver(on, out.length === 0, 0);
      }
      return messages;
    },
  };
}
