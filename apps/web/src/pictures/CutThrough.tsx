import type { ReactNode } from 'react';
import { Drawing, type Room } from './Drawing.tsx';
import './cut-through.css';

/** A heap's outline as it is drawn: what a bin holds is a box, what lies free a dome. */
type CutForm = 'box' | 'dome';

interface Properties {
  readonly label: string;
  readonly form: CutForm;
  readonly width_m: number;
  readonly height_m: number;
  /** How high it stands at its fullest, m; drawn as a broken line where it stands above the heap. */
  readonly fullestHeight_m: number;
  /** From the core outwards, all of one thickness, °C. */
  readonly shells_degC: readonly number[];
  /** A temperature in the reader's degrees, without its unit. */
  readonly sayTemp: (temp_degC: number) => string;
  readonly unit: string;
}

/** A heap cut through: shells of its own outline, each in the colour of its temperature and most with their figure. */
export function CutThrough(properties: Properties): ReactNode {
  return <Drawing label={properties.label} draw={(room) => drawCut(properties, room)} />;
}

/** Where one colour of the scale ends and the next begins, °C: even steps of temperature in even steps of lightness. */
const BOUNDS_degC = [20, 30, 40, 50, 60] as const;

function colourOf(temp_degC: number): string {
  return `var(--heat-${BOUNDS_degC.filter((bound) => temp_degC >= bound).length})`;
}

const TALLEST_LETTERS = 15;
const EDGE_LETTERS = 0.6;
/** Where the core of a dome lies, as a share of its height: it loses heat to the ground too. */
const CORE_OF_DOME = 0.4;
/** Room for a digit and between two figures, in letters. */
const DIGIT_LETTERS = 0.6;
const GAP_LETTERS = 0.6;
/** The outermost figure stands clear of the outline, px. */
const CLEAR_PX = 4;

function drawCut(properties: Properties, { width, letter }: Room): { height: number; picture: ReactNode } {
  const { form, width_m, height_m, fullestHeight_m, shells_degC, sayTemp, unit } = properties;
  const small = 0.875 * letter;
  const edge = EDGE_LETTERS * letter;
  const scale = Math.min((width - 2 * edge) / width_m, (TALLEST_LETTERS * letter) / fullestHeight_m);
  const [w, h] = [width_m * scale, height_m * scale];
  const ground = edge + fullestHeight_m * scale;
  const middle = width / 2;
  const core = ground - (form === 'box' ? 0.5 : CORE_OF_DOME) * h;
  const count = shells_degC.length;
  const outline = (share: number): string => outlineOf(form, { middle, core, ground, width: w, height: h, share });
  const thickness = w / 2 / count;
  const digits = Math.max(...shells_degC.map((temp_degC) => sayTemp(temp_degC).length));
  const told = toldShells(count, ((DIGIT_LETTERS * digits + GAP_LETTERS) * small) / thickness);
  const fullestTop = ground - fullestHeight_m * scale;
  const key = drawKey({ top: ground + 0.9 * small, width, small, sayTemp, unit });
  return {
    height: ground + 0.9 * small + key.height,
    picture: (
      <>
        {fullestTop < ground - h - 2 && (
          <path
            d={outlineOf(form, {
              middle,
              core: ground - (form === 'box' ? 0.5 : CORE_OF_DOME) * fullestHeight_m * scale,
              ground,
              width: w,
              height: fullestHeight_m * scale,
              share: 1,
            })}
            fill="none"
            stroke="var(--ink-quiet)"
            strokeWidth="1"
            strokeDasharray="5 4"
          />
        )}
        {shells_degC
          .map((temp_degC, i) => ({ temp_degC, share: (i + 1) / count }))
          .reverse()
          .map(({ temp_degC, share }) => (
            <path
              key={share}
              d={outline(share)}
              fill={colourOf(temp_degC)}
              stroke="var(--ink)"
              strokeWidth={share === 1 ? 1.75 : 0.5}
            />
          ))}
        <path d={`M0 ${ground} H${width}`} stroke="var(--ink)" strokeWidth="2" />
        {told.map((i) => (
          <text
            key={i}
            x={i === count - 1 ? middle + w / 2 - CLEAR_PX : i === 0 ? middle : middle + (i + 0.5) * thickness}
            y={core}
            dominantBaseline="central"
            textAnchor={i === count - 1 ? 'end' : 'middle'}
            fontSize={i === 0 ? letter : small}
            fontWeight={i === 0 ? 700 : 400}
            fill="var(--ink)"
            stroke="var(--ground)"
            strokeWidth="3.5"
            strokeLinejoin="round"
            paintOrder="stroke"
          >
            {sayTemp(shells_degC[i] ?? Number.NaN)}
          </text>
        ))}
        {key.picture}
      </>
    ),
  };
}

interface Cut {
  readonly middle: number;
  readonly core: number;
  readonly ground: number;
  readonly width: number;
  readonly height: number;
  /** How far out from the core, 0 to 1. */
  readonly share: number;
}

/** The outline drawn in towards the core. */
function outlineOf(form: CutForm, { middle, core, ground, width, height, share }: Cut): string {
  const [rx, ry] = [(share * width) / 2, share * height];
  const foot = core + share * (ground - core);
  if (form === 'box') return `M${middle - rx} ${foot} V${foot - ry} H${middle + rx} V${foot} Z`;
  return `M${middle - rx} ${foot} A${rx} ${ry} 0 0 1 ${middle + rx} ${foot} Z`;
}

/** The shells that have room for a figure: the core, the outside, and as many between as stand clear of one another. */
function toldShells(count: number, apart: number): readonly number[] {
  const step = Math.max(1, Math.ceil(apart));
  const outer: number[] = [];
  for (let i = count - 1; i >= step; i -= step) outer.push(i);
  return [0, ...outer.reverse()];
}

/** What the colours are, from cool to hot. */
function drawKey({
  top,
  width,
  small,
  sayTemp,
  unit,
}: {
  readonly top: number;
  readonly width: number;
  readonly small: number;
  readonly sayTemp: (temp_degC: number) => string;
  readonly unit: string;
}): { readonly height: number; readonly picture: ReactNode } {
  const steps = BOUNDS_degC.length + 1;
  const each = Math.min(3.2 * small, width / (steps + 1));
  const left = (width - steps * each) / 2;
  return {
    height: 2.3 * small,
    picture: (
      <g className="heat-key">
        {Array.from({ length: steps }, (_, i) => left + i * each).map((x, i) => (
          <rect
            key={x}
            x={x}
            y={top}
            width={each}
            height={0.7 * small}
            fill={`var(--heat-${i})`}
            stroke="var(--ink)"
            strokeWidth="0.5"
          />
        ))}
        {BOUNDS_degC.map((bound, i) => (
          <text
            key={bound}
            x={left + (i + 1) * each}
            y={top + 1.75 * small}
            textAnchor="middle"
            fontSize={small}
            fill="var(--ink-quiet)"
          >
            {i === BOUNDS_degC.length - 1 ? `${sayTemp(bound)} ${unit}` : sayTemp(bound)}
          </text>
        ))}
      </g>
    ),
  };
}
