import { soilWaterReport } from '@loamwright/advisor';
import {
  bad,
  check,
  createDraws,
  good,
  type Outcome,
  type Problem,
  type SoilLayer,
  type SoilWaterInput,
  soilTextureIds,
  soilWater,
} from '@loamwright/science';
import { readQuantity } from '@loamwright/units';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';

export interface BedWaterOptions {
  readonly om?: string | undefined;
  readonly stones?: string | undefined;
}

const LONGEST = 60;

/** `loamwright bed water`: how much water a soil holds for plants, layer by layer. */
export function bedWater(typed: readonly string[], options: BedWaterOptions, session: Session): Outcome<Answer> {
  if (typed.length === 0) return bad({ code: 'nothing-layered', path: '', found: '', wanted: '' });
  const layers = typed.map((text) => readLayer(text, session));
  const organic = options.om === undefined ? good(undefined) : readFigure(options.om, '--om');
  const stones = options.stones === undefined ? good(undefined) : readFigure(options.stones, '--stones');
  const problems = allOf(...layers, organic, stones);
  if (problems.length > 0 || !organic.ok || !stones.ok) return bad(...problems);
  const input = check<SoilWaterInput>(soilWater.input, {
    layers: layers.flatMap((one, i) =>
      one.ok
        ? [
            {
              ...one.value,
              ...(i === 0 && organic.value !== undefined && { organicMatter_pctDry: organic.value }),
              ...(stones.value !== undefined && { stones_pctVolume: stones.value }),
            },
          ]
        : [],
    ),
  });
  if (!input.ok) return bad(...asTyped(input.problems, typed));
  const found = soilWater.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const { speaker, terminal } = session;
  const said = soilWaterReport(found.value).map((one): [string] => [speaker.tell(one)]);
  return good({ value: { input: input.value, ...found.value }, text: page(terminal.columns, ...said) });
}

/** What the schema refuses, where it was typed: each problem once, at its layer or at the option that holds for all of them. */
function asTyped(problems: readonly Problem[], typed: readonly string[]): readonly Problem[] {
  const at = problems.map((one) => {
    const [, layer = '', field = ''] = /^layers\[(\d+)\]\.(\w+)$/u.exec(one.path) ?? [];
    return { ...one, path: optionOf[field] ?? typed[Number(layer)]?.slice(0, LONGEST) ?? one.path };
  });
  return at.filter(({ path }, i) => at.findIndex((one) => one.path === path) === i);
}

const optionOf: Readonly<Record<string, string>> = { organicMatter_pctDry: '--om', stones_pctVolume: '--stones' };

/** `loam=30cm`, or `15%=1m` where its water was measured. Problems: `not-one-of`, `number-unreadable`, `measurement-unreadable`. */
function readLayer(typed: string, { speaker }: Session): Outcome<SoilLayer> {
  const [what = '', thick = ''] = typed.slice(0, LONGEST).split('=');
  const thickness = readQuantity(thick, 'length', speaker.system === 'us' ? 'in' : 'cm');
  if (thickness === undefined || thickness.si <= 0)
    return bad({ code: 'measurement-unreadable', path: typed.slice(0, LONGEST), found: thick, wanted: '30cm, 12in' });
  if (what.includes('%')) {
    const water = readFigure(what, typed.slice(0, LONGEST));
    return water.ok ? good({ thickness_m: thickness.si, available_pctVolume: water.value }) : water;
  }
  const texture = readOneOf(what, soilTextureIds, typed.slice(0, LONGEST));
  return texture.ok ? good({ thickness_m: thickness.si, texture: texture.value }) : texture;
}
