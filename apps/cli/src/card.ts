import type { BuildCardReport, CardLayerWords } from '@loamwright/advisor';
import type { Speaker } from '@loamwright/words';
import { cautionText } from './commands/heap.ts';
import { page } from './text.ts';

/** How tall the drawn heap is, in lines. */
const ROWS = 18;
const WIDTH = 22;

/** How each part of a heap is shaded; a number stands in it too, so that shade is never alone. */
const shades: Readonly<Record<CardLayerWords['role'], string>> = { base: '▒', dry: '·', wet: '░', cover: '▒' };

/** A build card as text: the heap to scale, then its layers as steps from the ground up. */
export function cardText(card: BuildCardReport, speaker: Speaker, columns: number): string {
  const { tell } = speaker;
  const steps = card.layers.map((layer, i): [string, string] => {
    const more = [layer.water, layer.starter].filter((said) => said !== null).map(tell);
    return [`${`${i + 1}.`.padEnd(4)}${[tell(layer.said), ...more].join(' ')}`, '    '];
  });
  const whole = [card.height, card.water, ...(card.repeats === null ? [] : [card.repeats])].map(tell).join(' ');
  const blocks = [
    drawCard(card, speaker),
    page(
      columns,
      [speaker.say('cli.card.fromGround')],
      ...steps.map(([text, indent]): [string, string] => [text, indent]),
    ),
    page(columns, [whole]),
    page(columns, ...[...card.chop, ...card.notes].map((said): [string, string] => [`- ${tell(said)}`, '  '])),
    page(
      columns,
      ...card.permits.filter(({ permit }) => permit !== 'allowed').map(({ said }): [string] => [tell(said)]),
    ),
    cautionText(card.cautions, speaker, columns),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}

/** The layers to scale, the top one first; each is at least one line high and bears its step's number. */
function drawCard({ layers }: BuildCardReport, speaker: Speaker): string {
  const top_m = Math.max(...layers.map(({ bottom_m, height_m }) => bottom_m + height_m));
  const drawn = layers.map(({ role, height_m }, i) => {
    const rows = Math.max(1, Math.round((height_m / top_m) * ROWS));
    const shade = shades[role].repeat(WIDTH);
    return Array.from({ length: rows }, (_, row) =>
      row === 0 ? `${shade.slice(0, 2)} ${`${i + 1}`.padEnd(3)}${shade.slice(6)}` : shade,
    );
  });
  const height = speaker.likely(top_m, 'm', 'length');
  const margin = ' '.repeat(height.length + 1);
  const rows = drawn.reverse().flat();
  return [
    `${height} ┌${'─'.repeat(WIDTH)}┐`,
    ...rows.map((row) => `${margin}│${row}│`),
    `${margin}└${'─'.repeat(WIDTH)}┘`,
  ].join('\n');
}
