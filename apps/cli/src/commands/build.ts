import { type BuildCardReport, buildCardReport, isRaw, scaled, type Weighed, weighed } from '@loamwright/advisor';
import type { Bodies, Entered, Holding, LayerPut } from '@loamwright/daybook';
import {
  type Amount,
  type BuildCard,
  type BuildCardInput,
  bad,
  buildCard,
  createDraws,
  good,
  type MixBalance,
  type MixBalanceInput,
  mixBalance,
  type Outcome,
  type Quantity,
} from '@loamwright/science';
import type { Answer } from '../answer.ts';
import { type BayMeant, bayMeant } from '../bay.ts';
import { cardText } from '../card.ts';
import { tellDay } from '../dates.ts';
import { readIngredients } from '../grammar/ingredient.ts';
import { readMeasurement } from '../grammar/measurement.ts';
import { readPast, type WhenRead } from '../grammar/when.ts';
import { namesOf } from '../holding.ts';
import { type LastMix, lastMix, type Mixed } from '../mixed.ts';
import { cardLine, weighingOf } from '../put.ts';
import { recorded } from '../recorded.ts';
import type { Session } from '../session.ts';
import { openWithSizes } from '../sizes.ts';

export interface BuildOptions {
  readonly name?: string | undefined;
  readonly bay?: string | undefined;
  readonly water?: string | undefined;
  /** Which answer of the last mix, if not the first. */
  readonly aim?: string | undefined;
  readonly cardOnly?: boolean | undefined;
  readonly fromStock?: boolean | undefined;
  readonly when?: string | undefined;
  readonly note?: string | undefined;
  readonly size?: readonly string[] | undefined;
}

/** What is built. */
interface Plan {
  readonly card: BuildCardInput;
  /** For each line of the card the amount as it is weighed, and as it was given. */
  readonly amounts: readonly { readonly amount: Amount; readonly given?: Entered | undefined }[];
  /** The bay it stands in, where that is written down. */
  readonly bay: string | undefined;
}

/** `loamwright build`: writes down a heap from the last mix, or from amounts given, and prints its build card. */
export async function build(
  typed: readonly string[],
  options: BuildOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const when = readPast(options.when ?? 'now', before.now(), before.zone);
  if (!when.ok) return when;
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  if (typed.length > 0 && options.aim !== undefined) {
    return bad({ code: 'aim-with-stuff', path: '--aim', found: options.aim, wanted: '' });
  }
  const plan =
    typed.length === 0 ? planFromLast(options, holding, session) : planFromTyped(typed, options, holding, session);
  if (!plan.ok) return plan;
  const card = buildCard.run(plan.value.card, { draws: createDraws() });
  if (!card.ok) return card;
  const report = buildCardReport(card.value, holding);
  const { speaker, terminal } = session;
  const text = cardText(report, speaker, terminal.columns);
  if (options.cardOnly === true) return good({ value: { card: card.value }, text });
  const body = bodyOf(plan.value, card.value, { options, holding, session, when: when.value });
  if (!body.ok) return body;
  return writeHeap(body.value, { card: card.value, report, text, when: when.value, session });
}

/** A bay that was named here goes before the one that was mixed for. */
function planFromLast(options: BuildOptions, holding: Holding, session: Session): Outcome<Plan> {
  const last = lastMix(session);
  if (!last.ok) return last;
  const { baySaid, bay: bayThen } = last.value;
  const chosen = answerNamed(options.aim, last.value);
  if (!chosen.ok) return chosen;
  const { card } = chosen.value;
  if (card.mix.length === 0) return bad({ code: 'mix-empty', path: '', found: '', wanted: '' });
  const water = waterOf(options, session);
  if (!water.ok) return water;
  const bay: Outcome<BayMeant> =
    options.bay === undefined
      ? good({ ...(baySaid && { size: card.bay }), ...(bayThen !== undefined && { id: bayThen }) })
      : bayMeant(options.bay, holding, session);
  const amounts = chosen.value.amounts.map((amount) => ({ amount }));
  return planned({ ...card, ...(water.value !== undefined && { water_L: water.value }) }, amounts, bay);
}

/** Problem: `no-such-aim`. */
function answerNamed(aim: string | undefined, last: LastMix): Outcome<Mixed> {
  if (aim === undefined) return good(last);
  const other = last.others.find((one) => one.aim === aim);
  if (other !== undefined) return good(other);
  const wanted = last.others.map((one) => one.aim).join(', ');
  return bad({ code: 'no-such-aim', path: '--aim', found: aim, wanted });
}

function planFromTyped(
  typed: readonly string[],
  options: BuildOptions,
  holding: Holding,
  session: Session,
): Outcome<Plan> {
  const ingredients = readIngredients(typed, namesOf(session, holding));
  if (!ingredients.ok) return ingredients;
  const water = waterOf(options, session);
  if (!water.ok) return water;
  const bay: Outcome<BayMeant> = options.bay === undefined ? good({}) : bayMeant(options.bay, holding, session);
  const lines = ingredients.value.map((ingredient) => cardLine(ingredient, holding, session));
  const problems = lines.flatMap((line) => (line.ok ? [] : line.problems));
  if (problems.length > 0) return bad(...problems);
  const ownSizes = session.settings.measures_L;
  return planned(
    {
      mix: lines.flatMap((line) => (line.ok ? [line.value] : [])),
      ...(water.value !== undefined && { water_L: water.value }),
      ...(ownSizes !== undefined && { ownSizes }),
    },
    ingredients.value.map(({ amount, entered }) => ({ amount, given: entered })),
    bay,
  );
}

function planned(card: Omit<BuildCardInput, 'bay'>, amounts: Plan['amounts'], bay: Outcome<BayMeant>): Outcome<Plan> {
  if (!bay.ok) return bay;
  const { id, size } = bay.value;
  if (size === undefined)
    return bad({
      code: id === undefined ? 'bay-needed' : 'bay-without-size',
      path: '--bay',
      found: id ?? '',
      wanted: '',
    });
  return good({ card: { ...card, bay: size }, amounts, bay: id });
}

const LITRES_PER_M3 = 1000;

function waterOf({ water }: BuildOptions, session: Session): Outcome<number | undefined> {
  if (water === undefined) return good(undefined);
  const read = readMeasurement(water, 'liquid', '--water', session.speaker.system);
  return read.ok ? good(read.value.si * LITRES_PER_M3) : read;
}

interface Ground {
  readonly options: BuildOptions;
  readonly holding: Holding;
  readonly session: Session;
  readonly when: WhenRead;
}

interface HeapDrafted {
  readonly body: Bodies['heap-built'];
  readonly entered: Readonly<Record<string, Entered>>;
}

/** The heap as it is laid: its layers from the ground up, each weighed as its part of what goes in. */
function bodyOf(plan: Plan, { layers, height_m, water_L }: BuildCard, ground: Ground): Outcome<HeapDrafted> {
  const { card, bay, amounts } = plan;
  const { options, holding, session, when } = ground;
  const wholes = card.mix.map(({ material }, line) => weighedLine(material, amounts[line]?.amount, ground));
  const problems = wholes.flatMap((one) => (one.ok ? [] : one.problems));
  const balance = mixBalance.run(balanceInput(plan), { draws: createDraws() });
  if (!balance.ok || problems.length > 0) return bad(...problems, ...(balance.ok ? [] : balance.problems));
  const put: LayerPut[] = [];
  const entered: Record<string, Entered> = {};
  for (const { role, parts } of layers) {
    for (const { line, material, measure, count } of parts) {
      const [given, whole] = [card.mix[line], wholes[line]];
      if (given === undefined || whole === undefined || !whole.ok) continue;
      const share = count / given.count;
      const told = enteredFor(amounts[line], share, { amount: count, unit: measure });
      if (told !== undefined) entered[`/layers/${put.length}/mass_kg`] = told;
      put.push({
        material,
        mass_kg: scaled(whole.value.mass_kg, share),
        volume_m3: scaled(whole.value.volume_m3, share),
        part: role === 'base' || role === 'cover' ? role : 'body',
        raw: (given.doubtful ?? []).length > 0 || isRaw(material, holding),
        ...(options.fromStock === true && { from: { type: 'stock' as const } }),
      });
    }
  }
  const day = tellDay(when.happened, session.zone, session.speaker.locale);
  const body: Bodies['heap-built'] = {
    name: options.name ?? session.speaker.say('cli.heap.defaultName', { day }),
    ...(bay !== undefined && { bay }),
    layers: put,
    ...(water_L > 0 && { water_L }),
    size: { width_m: card.bay.width_m, depth_m: card.bay.depth_m, height_m },
    mix: answerOf(balance.value),
    ...(options.note !== undefined && { note: options.note }),
  };
  return good({ body, entered });
}

/** A part of what was counted is a count too; of what was weighed or guessed, the person gave no part. */
function enteredFor(line: Plan['amounts'][number] | undefined, share: number, counted: Entered): Entered | undefined {
  if (share === 1 && line?.given !== undefined) return line.given;
  return line !== undefined && 'measure' in line.amount ? counted : undefined;
}

function weighedLine(material: string, amount: Amount | undefined, { holding, session }: Ground): Outcome<Weighed> {
  if (amount === undefined) throw new RangeError(`no amount of ${material}`);
  return weighed({ material, amount }, weighingOf(holding, session));
}

function balanceInput({ card, amounts }: Plan): MixBalanceInput {
  const { mix, water_L, bay, ownSizes, packing_share } = card;
  const ingredients = mix.flatMap((line, i): MixBalanceInput['ingredients'] => {
    const { measure: _measure, count: _count, fill: _fill, packed: _packed, ...rest } = line;
    const amount = amounts[i]?.amount;
    return amount === undefined ? [] : [{ ...rest, amount }];
  });
  return { ingredients, water_L, bay, ownSizes, packing_share };
}

/** What is kept of the reckoning: so that later advice knows what the heap was thought to be. */
function answerOf(balance: MixBalance): NonNullable<Bodies['heap-built']['mix']> {
  const ratio: Quantity | undefined = balance.carbonToNitrogen_ratio?.value;
  return {
    ...(ratio !== undefined && { carbonToNitrogen: ratio }),
    moisture_pctWet: balance.moisture_pctWet.value,
    density_kgPerM3AsIs: balance.density_kgPerM3AsIs.value,
    freeAirSpace_pct: balance.freeAirSpace_pctVolume.value,
    volume_m3: balance.volume_m3,
    ...(balance.height_m !== undefined && { height_m: balance.height_m }),
  };
}

interface Drawn {
  readonly card: BuildCard;
  readonly report: BuildCardReport;
  readonly text: string;
  readonly when: WhenRead;
  readonly session: Session;
}

async function writeHeap(
  { body, entered }: HeapDrafted,
  { card, text, when, session }: Drawn,
): Promise<Outcome<Answer>> {
  const heap = session.newId();
  const jotting = { kind: 'heap-built' as const, body, entered, about: [{ type: 'heap', id: heap }], when };
  const written = await recorded(session, [jotting], { silent: true });
  if (!written.ok) return written;
  const { value } = written.value;
  return good({ value: { heap, card, ...(value as object) }, text: `${written.value.text}\n\n${text}` });
}
