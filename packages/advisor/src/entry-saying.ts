import type { About, Holding, KindId, MaterialFigures, Reading, Told } from '@loamwright/daybook';
import type { PropertyId, Quantity } from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { readClause } from './clause-phrase.ts';
import { clauseSaying } from './clause-report.ts';
import { phrasesOf } from './local-clauses.ts';
import { figureSaying } from './material-words.ts';
import { bayName, bedName, heapName, materialName, someOf } from './names.ts';
import { quantitiesOf } from './own-stuff.ts';
import { ripenessWords } from './ripe-kept.ts';
import { area, bulk, liquid, mass, say, sayOf, temperature } from './saying.ts';
import { soilTestedSaying } from './soil-told.ts';
import { massAsTyped, stuffOf, typedAmount } from './typed.ts';

type Teller<Id extends KindId> = (told: Told<Id>, holding: Holding) => Saying;

/** An entry as a sentence. */
export function entrySaying(told: Told, holding: Holding): Saying {
  // The table pairs each kind with the teller of its own body, which the type of the lookup can't say.
  return (tellers[told.kind] as Teller<KindId>)(told, holding);
}

const percent = (share: number): number => Math.round(100 * share);

const tellers: { readonly [Id in KindId]: Teller<Id> } = {
  'material-described': ({ subject, body }, holding) => {
    const figures = figuresTold(body);
    const material = materialName(holding, subject);
    if (figures.length === 0) return say('advisor.book.material-described', { material, name: body.name });
    return say('known.book.described', { material, figures });
  },
  'material-measured': ({ subject, body }, holding) => {
    const places = { material: materialName(holding, subject), figures: figuresTold(body) };
    if (body.method === undefined) return say('known.book.measured-bare', places);
    return say('known.book.measured', { ...places, method: body.method });
  },
  'stock-in': ({ subject, body, entry }, holding) => {
    const stuff = someOf(holding, subject, massAsTyped(entry, '/mass_kg', body.mass_kg));
    if (body.supplier === undefined) return say('advisor.book.stock-in', { stuff });
    return say('advisor.book.stock-in-from', { stuff, supplier: body.supplier });
  },
  'stock-out': ({ subject, body, entry }, holding) =>
    say('advisor.book.stock-out', {
      stuff: someOf(holding, subject, massAsTyped(entry, '/mass_kg', body.mass_kg)),
      why: sayOf('advisor.book.why', body.why),
    }),
  'bay-set-up': ({ body }) => say('advisor.book.bay-set-up', { name: body.name }),
  'heap-built': (told, holding) => builtSaying(told, holding),
  'heap-fed': ({ subject, body, entry }, holding) =>
    say('advisor.book.heap-fed', {
      heap: heapName(holding, subject),
      stuff: stuffOf(entry, body.layers).map(({ material, amount }) => someOf(holding, material, amount)),
    }),
  reading: ({ subject, body }, holding) => readingSaying(heapName(holding, subject), body),
  turned: ({ subject, body }, holding) => {
    const heap = heapName(holding, subject);
    if (body.bay === undefined) return say('advisor.book.turned', { heap });
    return say('advisor.book.turned-into', { heap, bay: bayName(holding, body.bay) });
  },
  watered: ({ subject, body, entry }, holding) => {
    const entered = entry.entered?.['/volume_L'];
    return say('advisor.book.watered', {
      heap: heapName(holding, subject),
      volume: entered === undefined ? liquid(body.volume_L) : typedAmount(entered),
      liquid: sayOf('advisor.liquid', body.liquid ?? 'water'),
    });
  },
  covered: ({ subject, body }, holding) => {
    const heap = heapName(holding, subject);
    if (body.cover === 'none') return say('advisor.book.uncovered', { heap });
    return say('advisor.book.covered', { heap, cover: sayOf('advisor.cover', body.cover) });
  },
  moved: ({ subject, body }, holding) =>
    say('advisor.book.moved', { heap: heapName(holding, subject), bay: bayName(holding, body.bay) }),
  combined: ({ subject, body }, holding) =>
    say('advisor.book.combined', {
      heap: heapName(holding, subject),
      heaps: body.from.map(({ heap }) => heapName(holding, heap)),
    }),
  split: ({ subject, body }, holding) =>
    say('advisor.book.split', {
      heap: heapName(holding, subject),
      parts: body.into.map(({ heap, share }) =>
        say('advisor.book.part', { pct: percent(share), heap: heapName(holding, heap) }),
      ),
    }),
  screened: ({ subject, body, entry }, holding) => {
    const { material, mass_kg } = body.oversize;
    return say('advisor.book.screened', {
      heap: heapName(holding, subject),
      stuff: someOf(holding, material, massAsTyped(entry, '/oversize/mass_kg', mass_kg)),
    });
  },
  finished: ({ subject, body }, holding) => {
    const heap = heapName(holding, subject);
    if (body.mass_kg === undefined) return say('advisor.book.finished', { heap });
    return say('advisor.book.finished-mass', { heap, mass: mass(body.mass_kg) });
  },
  spread: ({ subject, body, entry }, holding) => {
    const bed = bedName(holding, subject);
    if (body.of.type === 'heap') {
      const places = { heap: heapName(holding, body.of.id), bed };
      const { volume_m3 } = body;
      if (volume_m3 === undefined) {
        const { share } = body.of;
        return share === 1
          ? say('advisor.book.spread-rest', places)
          : say('advisor.book.spread-share', { ...places, pct: percent(share) });
      }
      const typed = entry.entered?.['/volume_m3'];
      const amount = typed === undefined ? bulk(volume_m3) : typedAmount(typed);
      return say('advisor.book.spread-heap', { ...places, amount });
    }
    const amount = massAsTyped(entry, '/of/mass_kg', body.of.mass_kg);
    return say('advisor.book.spread-material', { stuff: someOf(holding, body.of.id, amount), bed });
  },
  'bed-set-up': ({ body }) => say('advisor.book.bed-set-up', { name: body.name, area: area(body.area_m2) }),
  sown: ({ subject, body }, holding) => say('advisor.book.sown', { crop: body.crop, bed: bedName(holding, subject) }),
  harvested: ({ subject, body }, holding) => {
    const places = { crop: body.crop, bed: bedName(holding, subject) };
    if (body.mass_kg === undefined) return say('advisor.book.harvested', places);
    return say('advisor.book.harvested-mass', { ...places, mass: mass(body.mass_kg) });
  },
  'soil-tested': ({ subject, body }, holding) => soilTestedSaying(body, bedName(holding, subject)),
  'ripeness-tested': ({ subject, body }, holding) =>
    say('ripe.book', { heap: heapName(holding, subject), what: ripenessWords(body.seen) }),
  'bean-tested': ({ entry, body }, holding) =>
    sayOf('advisor.book.bean-tested', body.seen.hurt, { stuff: triedWords(entry.about, holding) }),
  note: ({ body }) => say('advisor.book.note', { text: body.text }),
  photo: ({ body }) =>
    body.caption === undefined ? say('advisor.book.photo') : say('advisor.book.photo-of', { caption: body.caption }),
  series: ({ subject, body }, holding) =>
    say('advisor.book.series', { count: body.count, probe: body.probe, heap: heapName(holding, subject) }),
  'attachment-removed': () => say('advisor.book.attachment-removed'),
  'local-clause': ({ body }) => say('clauses.book', { of: body.title, what: phrasesOf(body.text).map(clauseWords) }),
  withdrawal: ({ body }) =>
    body.why === undefined ? say('advisor.book.withdrawal') : say('advisor.book.withdrawal-why', { why: body.why }),
};

/** In words where it means the same in feet and in metres; a bare figure is told as it stands. */
function clauseWords(phrase: string): Saying {
  const [metric, us] = (['metric', 'us'] as const).map((system) => readClause(phrase, '', system));
  return metric?.ok === true && JSON.stringify(metric) === JSON.stringify(us)
    ? clauseSaying(metric.value)
    : say('advisor.named', { name: phrase });
}

function figuresTold(figures: MaterialFigures): readonly Saying[] {
  const all = Object.entries(quantitiesOf(figures)) as readonly (readonly [PropertyId, Quantity])[];
  return all.map(([property, quantity]) => figureSaying(property, quantity));
}

function builtSaying({ subject, body, entry }: Told<'heap-built'>, holding: Holding): Saying {
  const heap = heapName(holding, subject);
  if (body.layers.length === 0) return say('advisor.book.heap-begun', { heap });
  const stuff = stuffOf(entry, body.layers).map(({ material, amount }) => someOf(holding, material, amount));
  if (body.bay === undefined) return say('advisor.book.heap-built-nowhere', { heap, stuff });
  return say('advisor.book.heap-built', { heap, bay: bayName(holding, body.bay), stuff });
}

function readingSaying(heap: Saying, body: Reading): Saying {
  const seen = [
    ...(body.squeeze === undefined ? [] : [sayOf('advisor.squeeze', body.squeeze)]),
    ...(body.smell === undefined ? [] : [sayOf('advisor.smell', body.smell)]),
  ];
  if (body.temp_degC === undefined) {
    return seen.length === 0
      ? say('advisor.book.reading-other', { heap })
      : say('advisor.book.reading-seen', { heap, seen });
  }
  const places: Record<string, Place> = {
    heap,
    temp: temperature(body.temp_degC),
    where: sayOf('reading.where', body.point ?? 'core'),
    doubted: body.doubted === true ? 1 : 0,
  };
  return seen.length === 0
    ? say('advisor.book.reading', places)
    : say('advisor.book.reading-both', { ...places, seen });
}

/** The heap or the material in which beans were grown. */
function triedWords(about: readonly About[], holding: Holding): Saying {
  const [tried] = about.filter(({ type }) => type === 'heap' || type === 'material');
  if (tried === undefined) return say('advisor.book.bean-tested.something');
  return tried.type === 'heap' ? heapName(holding, tried.id) : materialName(holding, tried.id);
}
