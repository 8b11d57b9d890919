import type { Amount } from '@loamwright/science';
import { isMessageKey, type Saying, type Speaker } from '@loamwright/words';

/** An amount as a grower says it: "9 buckets", "half a barrow, pressed down", "a lot". */
export function sayAmount(speaker: Speaker, amount: Amount): string {
  const said = bareAmount(speaker, amount);
  return amount.packed === true ? speaker.say('app.amount.packed', { amount: said }) : said;
}

function bareAmount(speaker: Speaker, amount: Amount): string {
  if ('vague' in amount) return speaker.say(`measure.vague.${amount.vague}`);
  if ('mass_kg' in amount) return speaker.likely(amount.mass_kg, 'kg', 'mass');
  if ('volume_m3' in amount) return speaker.likely(amount.volume_m3, 'm3', 'bulkVolume');
  const said = counted(speaker, amount.measure, amount.count);
  return amount.fill === undefined || amount.fill === 'level'
    ? said
    : speaker.say('app.amount.filled', { amount: said, fill: speaker.say(`measure.fill.${amount.fill}`) });
}

function counted(
  speaker: Speaker,
  measure: string,
  count: Extract<Amount, { readonly measure: string }>['count'],
): string {
  if (typeof count === 'string') {
    return speaker.say('app.amount.vagueCount', {
      count: speaker.say(`measure.vagueCount.${count}`),
      measure: speaker.sayIf(`measure.${measure}.name`, measure),
    });
  }
  const likely = typeof count === 'number' ? count : count.p50;
  const half = `measure.${measure}.half`;
  if (likely === 0.5 && isMessageKey(half)) return speaker.say(half);
  const some = `measure.${measure}.some`;
  return isMessageKey(some) ? speaker.say(some, { count: likely }) : `${speaker.figure(likely)} ${measure}`;
}

/** "9 buckets of straw", with the amount a piece of its own. One of the holding's own goes by the name it was given. */
export function someOf(speaker: Speaker, material: string, amount: string, name?: string): Saying {
  const key = `material.${material}.some`;
  return name === undefined && isMessageKey(key)
    ? { key, places: { amount } }
    : { key: 'app.amount.ofOther', places: { amount, material: nameOf(speaker, material, name) } };
}

/** What a material is called: by the name it was given here, else that of the tables. */
export function nameOf(speaker: Speaker, material: string, name?: string): string {
  return name ?? speaker.sayIf(`material.${material}.name`, material);
}
