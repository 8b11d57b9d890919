import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { attachmentName, draftOf, type Keeping, seal } from '@loamwright/daybook';
import { quarryLane, quarryLaneHolding } from '@loamwright/demo';
import { openSqliteKeeping } from '@loamwright/store/sqlite';
import {
  bundleLines,
  bundleOf,
  digestOf,
  exchangeWith,
  jsonLines,
  notThere,
  type OtherSide,
  readBundle,
} from '@loamwright/sync';
import { createSpeaker } from '@loamwright/words';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Options } from './options.ts';
import { type Running, run } from './run.ts';

const entries = quarryLane({ startDay: '2025-03-01', seed: 3 }).slice(0, 60);

let folder = '';
const running: Running[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'loamwright-run-'));
});
afterEach(async () => {
  for (const one of running.splice(0)) await one.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function start(options: Partial<Options> = {}, lines: string[] = []): Promise<Running> {
  const started = await tryStart(options, lines);
  if (!started.ok) throw new Error(JSON.stringify(started.problems));
  running.push(started.value);
  return started.value;
}

function tryStart(options: Partial<Options>, lines: string[] = []): ReturnType<typeof run> {
  return run(
    { port: 0, host: '127.0.0.1', lan: false, data: join(folder, 'data'), demo: false, json: false, ...options },
    {
      speaker: createSpeaker({ locale: 'en', system: 'metric' }),
      print: (line) => lines.push(line),
      now: () => new Date(),
      web: join(folder, 'web'),
      reckonThread: join(folder, 'no-thread.mjs'),
      terminal: { columns: 80, drawsCodes: true },
    },
  );
}

async function bookOf(count: number): Promise<string> {
  const file = join(folder, `other-${count}.sqlite`);
  const keeping = await openSqliteKeeping(file);
  await keeping.keep(entries.slice(0, count));
  const lines: string[] = [];
  for await (const line of bundleLines(await bundleOf(keeping, quarryLaneHolding))) lines.push(line);
  await keeping.close();
  return lines.join('');
}

const headers = { 'content-type': 'application/x-ndjson' };

describe('a running server', () => {
  it('says where it is in one line, and that the app is not built', async () => {
    const lines: string[] = [];
    const { port } = await start({}, lines);
    expect(lines).toEqual([`Loamwright is at http://localhost:${port}`, expect.stringContaining('npm run build')]);
  });

  it('exchanges a daybook both ways, and counts nothing twice', async () => {
    const lines: string[] = [];
    const { port } = await start({}, lines);
    const url = `http://127.0.0.1:${port}/api/daybook`;
    expect((await fetch(url)).status).toBe(204);
    const body = await bookOf(60);
    const first = await fetch(url, { method: 'POST', body, headers });
    expect(await first.json()).toMatchObject({ ok: true, value: { kept: 60, there: 0 } });
    const second = await fetch(url, { method: 'POST', body, headers });
    expect(await second.json()).toMatchObject({ ok: true, value: { kept: 0, there: 60 } });
    const read = await readBundle(await (await fetch(url)).text(), quarryLaneHolding);
    expect(read.problems).toEqual([]);
    expect(new Set(read.entries.map(({ sum }) => sum))).toEqual(new Set(entries.map(({ sum }) => sum)));
    expect(lines.filter((line) => /\d\d:\d\d/u.test(line)).map((line) => line.slice(6))).toEqual([
      'brought 60 new entries, 0 already here',
      'brought 0 new entries, 60 already here',
      'daybook handed out, 60 entries',
    ]);
  });

  it('keeps nothing of a file that is cut short', async () => {
    const { port } = await start();
    const url = `http://127.0.0.1:${port}/api/daybook`;
    const body = await bookOf(60);
    const cut = await fetch(url, { method: 'POST', body: body.slice(0, body.length / 2), headers });
    expect(cut.status).toBe(400);
    expect((await fetch(url)).status).toBe(204);
  });

  it('refuses the daybook of another holding with 409', async () => {
    const { port } = await start();
    const url = `http://127.0.0.1:${port}/api/daybook`;
    await fetch(url, { method: 'POST', body: await bookOf(3), headers });
    const other = (await bookOf(60)).replaceAll(quarryLaneHolding, 'elsewhere');
    const refused = await fetch(url, { method: 'POST', body: other, headers });
    expect(refused.status).toBe(409);
  });

  it('works on a folder that another process writes to at the same time', async () => {
    const { port } = await start();
    const keeping = await openSqliteKeeping(join(folder, 'data', 'daybook.sqlite'));
    await keeping.keep(entries.slice(0, 10));
    const url = `http://127.0.0.1:${port}/api/daybook`;
    const answer = await fetch(url, { method: 'POST', body: await bookOf(60), headers });
    expect(await answer.json()).toMatchObject({ value: { kept: 50, there: 10 } });
    expect((await keeping.read()).entries.length).toBe(60);
    await keeping.close();
  });

  it('never takes another port than the one that was asked for', async () => {
    const { port } = await start();
    expect(await tryStart({ port, data: join(folder, 'second') })).toMatchObject({
      ok: false,
      problems: [{ code: 'port-taken', found: String(port) }],
    });
  });

  it('says what is wrong with a file that is no daybook, and leaves it as it is', async () => {
    await start();
    const data = join(folder, 'broken');
    mkdirSync(data);
    writeFileSync(join(data, 'daybook.sqlite'), 'not a database, but somebody’s file'.repeat(50));
    expect(await tryStart({ data })).toMatchObject({ ok: false, problems: [{ code: 'damaged' }] });
    expect(readFileSync(join(data, 'daybook.sqlite'), 'utf8')).toContain('somebody’s file');
  });

  it('is gone when it is stopped, and can be started again', async () => {
    const { port, stop } = await start();
    await stop();
    await expect(fetch(`http://127.0.0.1:${port}/`)).rejects.toThrow();
    expect((await start({ port })).port).toBe(port);
  });

  it('tells programs in JSON', async () => {
    const lines: string[] = [];
    const { port } = await start({ json: true }, lines);
    expect(lines.map((line) => JSON.parse(line))).toEqual([
      { ok: true, value: { address: `http://localhost:${port}`, port } },
    ]);
  });
});

describe('an exchange by request and answer', () => {
  /** The server as a phone reaches it. `after` requests the answers are lost. */
  function reach(port: number, after = Number.POSITIVE_INFINITY): OtherSide {
    const url = `http://127.0.0.1:${port}/api/exchange`;
    let requests = 0;
    return {
      offer: async () => {
        const answer = await fetch(url);
        return answer.status === 204 ? null : answer.json();
      },
      async *send(message) {
        const body = JSON.stringify(message);
        const answer = await fetch(url, { method: 'POST', body, headers: { 'content-type': 'application/json' } });
        const text = await answer.text();
        requests += 1;
        if (requests > after) throw new Error('the answer is lost');
        if (!answer.ok) throw new Error(text);
        yield* jsonLines([text]);
      },
    };
  }

  /** A phone with these entries and a photo. */
  async function phoneWith(name: string, from: number, to: number): Promise<Keeping> {
    const keeping = await openSqliteKeeping(join(folder, `${name}.sqlite`));
    await keeping.keep(entries.slice(from, to));
    const bytes = new Uint8Array(300_000).fill(from);
    const hash = attachmentName(bytes);
    await keeping.attach(hash, bytes, 'image/jpeg');
    const drafted = draftOf(
      'photo',
      {
        id: `019c0000-0000-7000-8000-${String(from).padStart(12, '0')}`,
        holding: quarryLaneHolding,
        device: name,
        by: 'ada',
        happened: '2026-03-01T07:30:00.000Z',
        zone: 'Europe/London',
        precision: 'minute',
        written: '2026-03-01T07:31:00.000Z',
        about: [],
      },
      { attachment: hash, mediaType: 'image/jpeg' },
    );
    if (!drafted.ok) throw new Error(JSON.stringify(drafted.problems));
    const { value } = drafted;
    await keeping.write(name, (tip) => seal(tip, [value]));
    return keeping;
  }

  it('X15 X16 brings two phones together through a server that is lost and restarted on the way', async () => {
    const lines: string[] = [];
    const { port, stop } = await start({}, lines);
    const [one, two] = [await phoneWith('phone-one', 0, 40), await phoneWith('phone-two', 20, 60)];
    // What phone one sends first arrives, but it never learns of it.
    await expect(exchangeWith(one, reach(port, 1))).rejects.toThrow('lost');
    await stop();
    const again = await start();
    await exchangeWith(one, reach(again.port));
    const second = await exchangeWith(two, reach(again.port));
    expect(second).toMatchObject({ kept: 21, attached: 1, given: 21, givenAttachments: 1, problems: [] });
    const third = await exchangeWith(one, reach(again.port));
    expect(third).toMatchObject({ kept: 21, attached: 1, given: 0 });
    expect(notThere(await one.heads(), third.held ?? [])).toEqual([]);
    const [first, other] = [await one.heads(), await two.heads()];
    expect(digestOf(quarryLaneHolding, first)).toBe(digestOf(quarryLaneHolding, other));
    expect(first).toHaveLength(62);
    expect(await one.attachments()).toEqual(await two.attachments());
    expect((await one.check()).attachmentsMissing).toEqual([]);
    await one.close();
    await two.close();
  });

  it('refuses one of another holding, and keeps nothing of it', async () => {
    const { port } = await start();
    const here = await phoneWith('phone-one', 0, 5);
    await exchangeWith(here, reach(port));
    const elsewhere = await openSqliteKeeping(join(folder, 'elsewhere.sqlite'));
    await elsewhere.keep(entries.slice(0, 2).map((entry) => ({ ...entry, holding: 'elsewhere' })));
    await expect(exchangeWith(elsewhere, reach(port))).rejects.toThrow('exchange-other-holding');
    expect((await elsewhere.heads()).length).toBe(2);
    expect(await exchangeWith(here, reach(port))).toMatchObject({ kept: 0, given: 0 });
    await here.close();
    await elsewhere.close();
  });
});

describe('on the network', () => {
  /** Asks over TLS, trusting the data folder's authority alone. */
  function ask(
    port: number,
    path: string,
    options: { readonly key?: string; readonly servername?: string } = {},
  ): Promise<{ status: number; text: string }> {
    return new Promise((resolve, reject) => {
      const asked = request(
        {
          host: '127.0.0.1',
          port,
          path,
          ca: readFileSync(join(folder, 'data', 'lan', 'authority.crt')),
          servername: options.servername ?? 'localhost',
          headers: { host: `localhost:${port}`, ...(options.key && { authorization: `Bearer ${options.key}` }) },
        },
        (response) => {
          let text = '';
          response.setEncoding('utf8').on('data', (chunk: string) => {
            text += chunk;
          });
          response.on('end', () => resolve({ status: response.statusCode ?? 0, text }));
        },
      );
      asked.on('error', reject).end();
    });
  }

  it('serves HTTPS with the certificate that it made, and the daybook for its key alone', async () => {
    const lines: string[] = [];
    const { port } = await start({ lan: true, host: '0.0.0.0', json: true }, lines);
    const { value } = JSON.parse(lines[0] ?? '{}') as { value: { key: string; fingerprint: string; trust: string } };
    expect((await ask(port, '/trust')).text).toContain(value.fingerprint);
    expect((await ask(port, '/api/daybook')).status).toBe(401);
    expect((await ask(port, '/api/daybook', { key: value.key })).status).toBe(204);
    await expect(fetch(`http://127.0.0.1:${port}/`)).rejects.toThrow();
  });

  it('keeps its certificate and key from start to start, its secrets to their owner', async () => {
    const facts = async (): Promise<unknown> => {
      const lines: string[] = [];
      const one = await start({ lan: true, host: '0.0.0.0', json: true }, lines);
      await one.stop();
      const { key, fingerprint } = (JSON.parse(lines[0] ?? '{}') as { value: Record<string, unknown> }).value;
      return { key, fingerprint };
    };
    expect(await facts()).toEqual(await facts());
    for (const name of ['authority.key', 'key']) {
      expect(statSync(join(folder, 'data', 'lan', name)).mode & 0o777).toBe(0o600);
    }
  });

  it('prints the address, the key, the fingerprint and two codes that hold them', async () => {
    const lines: string[] = [];
    const { port } = await start({ lan: true, host: '0.0.0.0' }, lines);
    expect(lines[0]).toMatch(new RegExp(`^Loamwright is at https://[\\w.-]+:${port}$`, 'u'));
    const text = lines.join('\n');
    expect(text).toMatch(/\/trust/u);
    expect(text).toMatch(/Key to the daybook.*[\w-]{22}/u);
    expect(text).toMatch(/(?:[0-9A-F]{2}:){31}[0-9A-F]{2}/u);
    expect(text).toContain('▀');
    expect(text).toContain('same port');
  });

  it('says so when phones knew it under another address', async () => {
    const first = await start({ lan: true, host: '0.0.0.0' });
    await first.stop();
    const lines: string[] = [];
    const { port } = await start({ lan: true, host: '0.0.0.0' }, lines);
    expect(lines.join('\n')).toContain(`:${first.port} last time`);
    expect(lines.join('\n')).toContain(`:${port}`);
  });
});
