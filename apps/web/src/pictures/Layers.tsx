import { curveBasis, line } from 'd3-shape';
import { type ReactNode, useId } from 'react';
import { Drawing, type Room } from './Drawing.tsx';
import { fillOf, Patterns } from './Patterns.tsx';
import { type Drawn, texturesFor } from './texture.ts';
import { waver } from './wobble.ts';

/** One layer of a heap, from the ground up. */
export interface DrawnLayer {
  readonly material: Drawn;
  readonly thickness_m: number;
  /** Written beside it, in at most two short lines. */
  readonly name: string;
  readonly amount: string;
}

interface Properties {
  readonly label: string;
  readonly layers: readonly DrawnLayer[];
  readonly width_m: number;
  /** Height up to which the bay can be filled; null where nothing bounds the heap. */
  readonly height_m: number | null;
  /** Marks of the scale at the side, from the ground up. */
  readonly marks: readonly { readonly height_m: number; readonly text: string }[];
  /** Mark every layer that has a name, in one line; else each material is named once. */
  readonly numbered?: boolean | undefined;
  /** Most of the page's height that the heap may take, px. */
  readonly tallest?: number | undefined;
}

/** Layers of a heap in its bay, cut through from ground to top, drawn to scale. */
export function Layers(properties: Properties): ReactNode {
  const prefix = useId().replace(/[^a-zA-Z0-9]/gu, '');
  return <Drawing label={properties.label} draw={(room) => drawLayers(properties, prefix, room)} />;
}

interface Placed extends DrawnLayer {
  readonly top: number;
  readonly bottom: number;
}

const WALL = 7;
/** From the heap's edge to where a name begins, px. */
const LEADER = 32;

function drawLayers(
  properties: Properties,
  prefix: string,
  { width, letter }: Room,
): { height: number; picture: ReactNode } {
  const { layers, width_m, height_m, marks, numbered = false, tallest = 260 } = properties;
  const textures = texturesFor(layers.map(({ material }) => material));
  const heap_m = layers.reduce((sum, { thickness_m }) => sum + thickness_m, 0);
  const small = 0.9375 * letter;
  const left = Math.max(...marks.map(({ text }) => text.length), 2) * small * 0.58 + 14;
  const named = layers.filter(({ name }) => name !== '');
  const longest = Math.max(0, ...named.flatMap(({ name, amount }) => [0.6 * name.length, 0.52 * amount.length]));
  const roomForHeap = width - left - (named.length > 0 ? LEADER + longest * small : WALL + 12);
  const scale = Math.min(roomForHeap / width_m, tallest / Math.max(heap_m, height_m ?? 0, 0.1));
  const right = left + width_m * scale;
  const headroom = 10;
  const ground = headroom + Math.max(heap_m, height_m ?? 0) * scale;
  const placed = place(layers, ground, scale);
  const labels = spread(
    (numbered ? placed : firstOfEach(placed))
      .filter(({ name }) => name !== '')
      .map((layer) => ({ layer, y: (layer.top + layer.bottom) / 2 })),
    (numbered ? 1.25 : 2.35) * small,
    headroom + small,
    ground + small,
  );
  const lowest = labels.reduce((most, { at }) => Math.max(most, at + 1.2 * small), 0);
  const height = Math.max(ground + 16, lowest + 6);
  return {
    height,
    picture: (
      <>
        <Patterns prefix={prefix} textures={textures} />
        {placed.map((layer, i) => (
          <path
            // Layers have no name of their own: their place in the heap is what they are.
            key={`${layer.material.id}@${layer.bottom}`}
            d={outline(layer, i, left, right, i === placed.length - 1)}
            fill={fillOf(prefix, layer.material.id)}
            stroke="var(--ink)"
            strokeWidth="0.75"
          />
        ))}
        {height_m !== null && <Walls left={left} right={right} top={ground - height_m * scale} ground={ground} />}
        <path d={`M${left - 12} ${ground} H${right + 12}`} stroke="var(--ink)" strokeWidth="2.5" />
        {marks.map((mark) => (
          <g key={mark.text}>
            <path d={`M${left - 12} ${ground - mark.height_m * scale} h5`} stroke="var(--ink)" strokeWidth="1" />
            <text
              x={left - 15}
              y={ground - mark.height_m * scale}
              dominantBaseline="central"
              textAnchor="end"
              fontSize={small}
              fill="var(--ink-quiet)"
            >
              {mark.text}
            </text>
          </g>
        ))}
        {labels.map(({ layer, y, at }) => (
          <g key={`${layer.material.id}@${layer.bottom}`} fontSize={small} fill="var(--ink)">
            <path
              d={`M${right - 6} ${y} L${right + 12} ${y} L${right + 20} ${at} h6`}
              fill="none"
              stroke="var(--ink)"
              strokeWidth="0.75"
            />
            <circle cx={right - 6} cy={y} r="2" fill="var(--ground)" stroke="var(--ink)" strokeWidth="1" />
            <text x={right + 30} y={layer.amount === '' ? at + 0.33 * small : at - 0.3 * small} fontWeight="700">
              {layer.name}
            </text>
            {layer.amount !== '' && (
              <text x={right + 30} y={at + 0.8 * small} fill="var(--ink-quiet)">
                {layer.amount}
              </text>
            )}
          </g>
        ))}
      </>
    ),
  };
}

function Walls(properties: { left: number; right: number; top: number; ground: number }): ReactNode {
  const { left, right, top, ground } = properties;
  return (
    <g fill="none" stroke="var(--ink)" strokeWidth="1.25">
      <path d={`M${left - WALL} ${top} h${WALL} V${ground} h${-WALL} Z`} fill="var(--ground)" />
      <path d={`M${right} ${top} h${WALL} V${ground} h${-WALL} Z`} fill="var(--ground)" />
    </g>
  );
}

/** From the ground up, in px from the top of the picture. */
function place(layers: readonly DrawnLayer[], ground: number, scale: number): readonly Placed[] {
  let bottom = ground;
  return layers.map((layer) => {
    const top = bottom - layer.thickness_m * scale;
    const placed = { ...layer, top, bottom };
    bottom = top;
    return placed;
  });
}

/** Each material once, each where its name has room: spread from top to bottom as far as its layers allow. */
function firstOfEach(placed: readonly Placed[]): readonly Placed[] {
  const byMaterial = new Map<string, Placed[]>();
  for (const layer of placed) byMaterial.set(layer.material.id, [...(byMaterial.get(layer.material.id) ?? []), layer]);
  const middle = ({ top, bottom }: Placed): number => (top + bottom) / 2;
  const mean = (layers: readonly Placed[]): number =>
    layers.reduce((sum, layer) => sum + middle(layer), 0) / layers.length;
  const sorted = [...byMaterial.values()].sort((x, y) => mean(x) - mean(y));
  const [highest, lowest] = [placed.at(-1)?.top ?? 0, placed[0]?.bottom ?? 0];
  return sorted.flatMap((layers, i) => {
    const wanted = highest + ((lowest - highest) * (i + 0.5)) / sorted.length;
    const off = (layer: Placed): number => Math.abs(middle(layer) - wanted);
    return layers.length === 0 ? [] : [layers.reduce((best, layer) => (off(layer) < off(best) ? layer : best))];
  });
}

/** The outline of a layer: both edges waver the way their neighbours' do, and the top one is a little domed. */
function outline(layer: Placed, i: number, left: number, right: number, topmost: boolean): string {
  const reach = Math.min(1.8, (layer.bottom - layer.top) * 0.2);
  const below = waver({ from: left, to: right, y: layer.bottom, seed: i, reach: i === 0 ? 0 : reach });
  const above = waver({ from: left, to: right, y: layer.top, seed: i + 1, reach }).map(([x, y]): [number, number] => [
    x,
    topmost ? y - 5 * Math.sin((Math.PI * (x - left)) / (right - left)) : y,
  ]);
  const edge = line().curve(curveBasis);
  const upper = edge(above.map(([x, y]): [number, number] => [x, y])) ?? '';
  const lower = edge([...below].reverse().map(([x, y]): [number, number] => [x, y])) ?? '';
  return `${upper} L${lower.slice(1)} Z`;
}

/** Moves labels apart so that none stands on another, keeping their order. */
function spread<Label extends { readonly y: number }>(
  labels: readonly Label[],
  apart: number,
  highest: number,
  lowest: number,
): readonly (Label & { readonly at: number })[] {
  const sorted = [...labels].sort((a, b) => a.y - b.y);
  const at: number[] = [];
  for (const { y } of sorted) at.push(Math.max(y, (at.at(-1) ?? highest - apart) + apart, highest));
  const over = (at.at(-1) ?? 0) - lowest;
  if (over > 0) {
    for (let i = at.length - 1, limit = lowest; i >= 0; i--, limit -= apart) {
      const here = at[i] ?? 0;
      if (here > limit) at[i] = Math.max(limit, highest + i * apart);
    }
  }
  return sorted.map((label, i) => ({ ...label, at: at[i] ?? label.y }));
}
