import { type Keeping, seal } from '@loamwright/daybook';
import { describe, expect, test } from 'vitest';
import { bytesOf, chain, draft } from './entries.ts';
import { type Fault, type KeepingKit, type MakeKit, noFault, rejection } from './kit.ts';
import { withKeeping } from './with-keeping.ts';

/** More steps than any call takes: a loop that gets here has not been counting steps. */
const mostSteps = 60;

const kept = bytesOf('kept before');
const fresh = bytesOf('attached now');

/** What each call that changes something does to a keeping of three entries and one attachment. */
const changes: readonly { readonly title: string; readonly act: (keeping: Keeping) => Promise<unknown> }[] = [
  { title: 'keep of one', act: (keeping) => keeping.keep(chain(1, { first: 20, device: 'shed' })) },
  { title: 'keep of three', act: (keeping) => keeping.keep(chain(3, { first: 20, device: 'shed' })) },
  {
    title: 'write of two',
    act: (keeping) => keeping.write('phone-of-ada', (tip) => seal(tip, [draft(30), draft(31)])),
  },
  { title: 'attach', act: (keeping) => keeping.attach(fresh.hash, fresh.bytes, 'image/png') },
  { title: 'detach', act: (keeping) => keeping.detach(kept.hash) },
];

/** Everything that can be read of a keeping. */
async function everythingIn(kit: KeepingKit): Promise<unknown> {
  const keeping = await kit.open();
  const notes = await keeping.attachments();
  const attachments = [];
  for (const { hash } of notes) attachments.push(await keeping.attachment(hash));
  const everything = {
    page: await keeping.read(),
    heads: await keeping.heads(),
    tips: await keeping.tips(),
    holding: await keeping.holding(),
    check: await keeping.check(),
    attachments,
  };
  await keeping.close();
  return everything;
}

async function prepare(kit: KeepingKit): Promise<void> {
  const keeping = await kit.open();
  await keeping.keep(chain(3));
  await keeping.attach(kept.hash, kept.bytes, 'image/jpeg');
  await keeping.close();
}

/** Rules K6, K8, K24, K25. */
export function failureContract(makeKit: MakeKit): void {
  describe('failure', () => {
    const { kit, keeping } = withKeeping(makeKit);

    test.each(changes)(
      'K6 K8 K25 $title, full at each step in turn: rejected is as before, resolved is whole, and a second try does it',
      async ({ act }) => {
        const whole = await afterOne(makeKit, act);
        let step = 0;
        for (let failed = true; failed && step < mostSteps; ) {
          step += 1;
          const one = await makeKit();
          await prepare(one);
          const before = await everythingIn(one);
          const fault: Fault = noFault();
          const failing = await one.openFailing(fault);
          fault.stepsLeft = step;
          const outcome = await rejection(act(failing));
          failed = fault.failed > 0;
          fault.stepsLeft = Number.POSITIVE_INFINITY;
          expect(['resolved', 'full']).toContain(outcome);
          if (!failed) expect(outcome).toBe('resolved');
          // The same keeping goes on, and so does one opened anew.
          expect((await failing.read()).entries.length).toBe(
            outcome === 'full' ? 3 : (whole as { page: { entries: [] } }).page.entries.length,
          );
          const now = await everythingIn(one);
          expect(now).toEqual(outcome === 'full' ? before : whole);
          if (outcome === 'full') {
            expect(await rejection(act(failing))).toBe('resolved');
            expect(await everythingIn(one)).toEqual(whole);
          }
          await failing.close();
          await one.dispose();
        }
        // At least one step failed, and the last round went through without.
        expect(step).toBeGreaterThan(1);
        expect(step).toBeLessThan(mostSteps);
      },
    );

    test('K24 after close every call rejects with closed, and closing again is fine', async () => {
      await keeping().keep(chain(1));
      await keeping().close();
      await keeping().close();
      const calls: readonly Promise<unknown>[] = [
        keeping().keep(chain(1)),
        keeping().keep([]),
        keeping().write('shed', () => []),
        keeping().read(),
        keeping().pick([]),
        keeping().tips(),
        keeping().heads(),
        keeping().holding(),
        keeping().attach(fresh.hash, fresh.bytes, 'image/png'),
        keeping().attachment(fresh.hash),
        keeping().attachments(),
        keeping().detach(fresh.hash),
        keeping().check(),
      ];
      expect(await Promise.all(calls.map(rejection))).toEqual(calls.map(() => 'closed'));
    });

    test('K25 busy while another holds the lock; nothing is kept; afterwards it goes on', async () => {
      await keeping().keep(chain(1));
      const impatient = await kit().open({ wait_ms: 60 });
      const release = await kit().holdLock();
      expect(await rejection(impatient.keep(chain(2)))).toBe('busy');
      expect(await rejection(impatient.write('shed', (tip) => seal(tip, [draft(40, { device: 'shed' })])))).toBe(
        'busy',
      );
      expect(await rejection(impatient.attach(fresh.hash, fresh.bytes, 'image/png'))).toBe('busy');
      await release();
      expect((await impatient.read()).entries).toHaveLength(1);
      expect(await impatient.keep(chain(2))).toEqual({ kept: 1, there: 1, conflicts: [] });
      await impatient.close();
    });

    test('K25 a patient keeping waits until the lock is free', async () => {
      const release = await kit().holdLock();
      const kept = keeping().keep(chain(2));
      setTimeout(() => void release(), 120);
      expect(await kept).toEqual({ kept: 2, there: 0, conflicts: [] });
    });
  });
}

async function afterOne(makeKit: MakeKit, act: (keeping: Keeping) => Promise<unknown>): Promise<unknown> {
  const kit = await makeKit();
  await prepare(kit);
  const keeping = await kit.open();
  await act(keeping);
  await keeping.close();
  const whole = await everythingIn(kit);
  await kit.dispose();
  return whole;
}
