import type { BuildCardReport } from '@loamwright/advisor';
import type { BuildCard, CardLayer } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';
import type { ReactNode } from 'react';
import { type OwnMeasures, useSettings } from '../device/settings.ts';
import { nameOf, sayAmount } from '../mix/amount.ts';
import { drawnMaterial, likelyVolume_m3 } from '../mix/science.ts';
import { useSpeaker } from '../shell/words.tsx';
import { type DrawnLayer, Layers } from './Layers.tsx';
import { marksFor } from './marks.ts';

interface Properties {
  readonly card: BuildCard;
  readonly report: BuildCardReport;
  readonly bay: { readonly width_m: number; readonly height_m: number };
  /** Number the layers as the card's steps are numbered; else each material is named once. */
  readonly numbered?: boolean | undefined;
  readonly tallest?: number | undefined;
  /** Names of the holding's own materials. */
  readonly names?: ReadonlyMap<string, string> | undefined;
}

/** The layers of a build card in their bay, to scale. A layer of two materials is drawn as the two, one on the other. */
export function HeapLayers({ card, report, bay, numbered = false, tallest, names }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const amounts = amountsOf(speaker, card);
  const layers = card.layers.flatMap((layer, i): readonly DrawnLayer[] =>
    sharesOf(layer, measures_L).map(({ material, share }, part) => ({
      material: drawnMaterial(material),
      thickness_m: layer.height_m * share,
      name: numbered ? (part === 0 ? String(i + 1) : '') : nameOf(speaker, material, names?.get(material)),
      amount: numbered ? '' : (amounts.get(material) ?? ''),
    })),
  );
  return (
    <Layers
      label={speaker.say('app.layers.picture', {
        layers: speaker.list(report.layers.map(({ said }) => speaker.tell(said).replace(/\.$/u, ''))),
      })}
      layers={layers}
      width_m={bay.width_m}
      height_m={bay.height_m}
      marks={marksFor(speaker, bay.height_m)}
      numbered={numbered}
      tallest={tallest}
    />
  );
}

/** How much of a layer each of its materials is, by likely volume. */
function sharesOf(
  { parts }: CardLayer,
  ownSizes: OwnMeasures,
): readonly { readonly material: string; readonly share: number }[] {
  const volumes = parts.map(
    ({ material, measure, count }) => likelyVolume_m3(material, { measure, count }, ownSizes) ?? 0,
  );
  const total = volumes.reduce((sum, volume) => sum + volume, 0);
  return parts.map(({ material }, i) => ({
    material,
    share: total > 0 ? (volumes[i] ?? 0) / total : 1 / parts.length,
  }));
}

/** Everything of a material that goes in, as the grower counts it. */
function amountsOf(speaker: Speaker, card: BuildCard): ReadonlyMap<string, string> {
  const counts = new Map<string, { measure: string; count: number }>();
  for (const { material, measure, count } of card.layers.flatMap(({ parts }) => parts)) {
    counts.set(material, { measure, count: (counts.get(material)?.count ?? 0) + count });
  }
  return new Map([...counts].map(([material, amount]) => [material, sayAmount(speaker, amount)]));
}
