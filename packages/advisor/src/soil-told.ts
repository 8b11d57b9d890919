import type { SoilTested } from '@loamwright/daybook';
import { isEstimate, type Quantity, type SoilFigure } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { say } from './saying.ts';

/** A soil test of a bed with its figures as the laboratory printed them, and by which method and laboratory. */
export function soilTestedSaying(body: SoilTested, bed: Saying): Saying {
  const found = foundIn(body);
  if (found.length === 0) return say('advisor.book.soil-tested', { bed });
  const { laboratory } = body;
  return laboratory === undefined
    ? say('advisor.book.soil-tested.found', { bed, found })
    : say('advisor.book.soil-tested.by', { bed, found, laboratory });
}

function foundIn(body: SoilTested): readonly Saying[] {
  const { pH, organicMatter_pctDry: organic, conductivity_dSPerM: salts, method } = body;
  const mgPerKg = (quantity: Quantity): string => by(`${plain(quantity)} mg/kg`, method);
  return [
    ...(body.figures ?? []).map((figure) =>
      say(`advisor.book.soil.${figure.element}`, { value: by(printed(figure), figure.method ?? method) }),
    ),
    ...(body.phosphorus_mgPerKg === undefined
      ? []
      : [say('advisor.book.soil.phosphorus', { value: mgPerKg(body.phosphorus_mgPerKg) })]),
    ...(body.potassium_mgPerKg === undefined
      ? []
      : [say('advisor.book.soil.potassium', { value: mgPerKg(body.potassium_mgPerKg) })]),
    ...(pH === undefined ? [] : [say('advisor.book.soil.pH', { value: plain(pH) })]),
    ...(organic === undefined ? [] : [say('advisor.book.soil.organic', { value: plain(organic) })]),
    ...(salts === undefined ? [] : [say('advisor.book.soil.salts', { value: by(`${plain(salts)} dS/m`, method) })]),
  ];
}

/** With the method it was extracted by, in brackets, as a laboratory prints it. */
function by(value: string, method: string | undefined): string {
  return method === undefined ? value : `${value} (${method.replace(/^[a-z]/u, (letter) => letter.toUpperCase())})`;
}

function printed({ element, value, unit, asOxide }: SoilFigure): string {
  const oxide = element === 'phosphorus' ? 'P₂O₅' : 'K₂O';
  return [String(value), ...(unit === undefined ? [] : [unit]), ...(asOxide === true ? [oxide] : [])].join(' ');
}

function plain(quantity: Quantity): string {
  return isEstimate(quantity) ? `${quantity.p10}–${quantity.p90}` : String(quantity);
}
