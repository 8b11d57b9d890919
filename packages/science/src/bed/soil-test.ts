import table from '@loamwright/reference/soil-tests.json' with { type: 'json' };
import { z } from 'zod';
import { type Calculation, type Citation, good, type Outcome } from '../catalogue/index.ts';
import { type ClassId, classIds } from './budget-parameters.ts';

/** How phosphorus or potassium was drawn out of the soil. Figures of two methods are never turned into each other. */
export const soilMethods = ['mehlich-3', 'bray-1', 'olsen', 'ammonium-acetate', 'ammonium-nitrate'] as const;
export type SoilMethod = (typeof soilMethods)[number];

/** As labs print it. A part in a million of the mass is a milligram in a kilogram; a milligram in a litre is neither. */
export const soilUnits = ['ppm', 'mg/kg', 'mg/L', 'lb/ac'] as const;
export type SoilUnit = (typeof soilUnits)[number];

/** One figure of a soil test. */
export interface SoilFigure {
  readonly element: 'phosphorus' | 'potassium';
  readonly value: number;
  readonly unit?: SoilUnit | undefined;
  readonly method?: SoilMethod | undefined;
  /** Printed as P₂O₅ or K₂O. */
  readonly asOxide?: boolean | undefined;
}

export interface SoilTestInput {
  readonly figures: readonly SoilFigure[];
}

/** What one published table says of a figure. */
export interface SoilJudged extends Citation {
  readonly table: string;
  readonly class: ClassId;
}

export interface SoilRead {
  readonly element: SoilFigure['element'];
  /** As the element, in the unit of the tables; absent where the unit is not known. */
  readonly value?: number | undefined;
  readonly unit?: SoilUnit | undefined;
  /** What must be asked of the lab before anything can be judged. */
  readonly ask: readonly ('method' | 'unit')[];
  /** By each table of the method and unit; none where there is no such table. */
  readonly judged: readonly SoilJudged[];
  /** The class that is taken: the higher where tables differ, as too much does the harm; absent where none judges. */
  readonly taken?: ClassId | undefined;
  /** Whether the tables differ. */
  readonly differ: boolean;
  /** Years of harvests without any put on until no more is gained by less; of phosphorus in ppm only. */
  readonly runDown_years?: { readonly least: number; readonly most: number; readonly to_ppm: number } | undefined;
}

export interface SoilTestRead {
  readonly figures: readonly SoilRead[];
  readonly againAfter_years: { readonly least: number; readonly most: number };
}

interface Table extends Citation {
  readonly id: string;
  readonly element: SoilFigure['element'];
  readonly method: SoilMethod;
  readonly unit: SoilUnit;
  readonly upTo: readonly { readonly to?: number | undefined; readonly class: ClassId }[];
}

const parameters = table as unknown as {
  readonly tables: readonly Table[];
  readonly lbPerAcre_perPpm: Citation & { readonly value: number };
  readonly runDown_ppmPerYear: Citation & { readonly low: number; readonly high: number };
  readonly runDownTo_ppm: Citation & { readonly value: number };
  readonly againAfter_years: Citation & { readonly low: number; readonly high: number };
};

/** P₂O₅ over P and K₂O over K, by atomic weights (IUPAC). */
const OXIDE: Readonly<Record<SoilFigure['element'], number>> = { phosphorus: 2.2914, potassium: 1.2046 };

const sameUnit = (unit: SoilUnit): SoilUnit => (unit === 'mg/kg' ? 'ppm' : unit);

function read({ element, value, unit, method, asOxide = false }: SoilFigure): SoilRead {
  const asElement = asOxide ? value / OXIDE[element] : value;
  const ask = [
    ...(method === undefined ? (['method'] as const) : []),
    ...(unit === undefined ? (['unit'] as const) : []),
  ];
  if (method === undefined || unit === undefined) {
    return {
      element,
      ...(unit !== undefined && { value: asElement, unit: sameUnit(unit) }),
      ask,
      judged: [],
      differ: false,
    };
  }
  const judged = parameters.tables
    .filter((one) => one.element === element && one.method === method)
    .flatMap((one) => judgedBy(one, asElement, sameUnit(unit)));
  const classes = judged.map((one) => classIds.indexOf(one.class));
  const taken = classIds[Math.max(...classes)];
  return {
    element,
    value: asElement,
    unit: sameUnit(unit),
    ask,
    judged,
    ...(judged.length > 0 && taken !== undefined && { taken }),
    differ: new Set(classes).size > 1,
    ...runDownOf(element, inPpm(asElement, sameUnit(unit)), method),
  };
}

/** Pounds an acre and parts in a million go into each other; a milligram in a litre into neither. */
function inPpm(value: number, unit: SoilUnit): number | undefined {
  if (unit === 'ppm') return value;
  return unit === 'lb/ac' ? value / parameters.lbPerAcre_perPpm.value : undefined;
}

function judgedBy(one: Table, value: number, unit: SoilUnit): readonly SoilJudged[] {
  const ppm = inPpm(value, unit);
  const figure = one.unit === unit ? value : ppm === undefined ? undefined : inUnit(ppm, one.unit);
  if (figure === undefined) return [];
  const row = one.upTo.find(({ to }) => to === undefined || figure <= to);
  if (row === undefined) return [];
  const { source, place, mark } = one;
  return [{ table: one.id, class: row.class, source, place, mark }];
}

function inUnit(ppm: number, unit: SoilUnit): number | undefined {
  if (unit === 'ppm') return ppm;
  return unit === 'lb/ac' ? ppm * parameters.lbPerAcre_perPpm.value : undefined;
}

/** How long harvests alone take to bring phosphorus down, for the methods whose fall was published or is near to it. */
function runDownOf(
  element: SoilFigure['element'],
  ppm: number | undefined,
  method: SoilMethod,
): Pick<SoilRead, 'runDown_years'> {
  const { runDown_ppmPerYear: fall, runDownTo_ppm } = parameters;
  const to_ppm = runDownTo_ppm.value;
  const known = method === 'mehlich-3' || method === 'bray-1';
  if (element !== 'phosphorus' || ppm === undefined || ppm <= to_ppm || !known) return {};
  return { runDown_years: { least: (ppm - to_ppm) / fall.high, most: (ppm - to_ppm) / fall.low, to_ppm } };
}

function run({ figures }: SoilTestInput): Outcome<SoilTestRead> {
  const { low, high } = parameters.againAfter_years;
  return good({ figures: figures.map(read), againAfter_years: { least: low, most: high } });
}

const elementSchema = z.enum(['phosphorus', 'potassium']);
const citationShape = { source: z.string(), place: z.string(), mark: z.enum(['seen', 'memory', 'derived']) };
const MOST_FIGURE = 100_000;

export const soilFigureSchema: z.ZodType<SoilFigure> = z.strictObject({
  element: elementSchema,
  value: z.number().min(0).max(MOST_FIGURE).meta({ description: 'As the lab prints it.' }),
  unit: z.enum(soilUnits).optional(),
  method: z.enum(soilMethods).optional(),
  asOxide: z.boolean().optional().meta({ description: 'Printed as P₂O₅ or K₂O.' }),
});

/** A soil test's figures as the published tables of its own method class them. */
export const soilTestRead: Calculation<SoilTestInput, SoilTestRead> = {
  id: 'soil-test-read',
  title: 'What a soil test says',
  summary:
    'Takes phosphorus and potassium as a lab prints them and classes them by the published tables of that method, side by side where they differ. Figures of two methods are never turned into each other, and without method and unit nothing is judged: it says what to ask the lab. For high phosphorus it tells how many years harvests alone take to bring it down.',
  input: z.strictObject({
    figures: z.array(soilFigureSchema).min(1).max(20),
  }),
  output: z.strictObject({
    figures: z.array(
      z.strictObject({
        element: elementSchema,
        value: z.number().min(0).optional(),
        unit: z.enum(soilUnits).optional(),
        ask: z.array(z.enum(['method', 'unit'])),
        judged: z.array(z.strictObject({ table: z.string(), class: z.enum(classIds), ...citationShape })),
        taken: z.enum(classIds).optional(),
        differ: z.boolean(),
        runDown_years: z
          .strictObject({ least: z.number().min(0), most: z.number().min(0), to_ppm: z.number() })
          .optional(),
      }),
    ),
    againAfter_years: z.strictObject({ least: z.number(), most: z.number() }),
  }),
  sources: [
    ...parameters.tables,
    parameters.lbPerAcre_perPpm,
    parameters.runDown_ppmPerYear,
    parameters.runDownTo_ppm,
    parameters.againAfter_years,
  ],
  cautions: ['local-rules'],
  example: { figures: [{ element: 'phosphorus', value: 84, unit: 'ppm', method: 'bray-1' }] },
  run,
};
