import type { PartWords } from '@loamwright/advisor';
import type { CautionId, PartAmount } from '@loamwright/science';
import type { Figure, Saying } from '@loamwright/words';
import { type ReactNode, useState } from 'react';
import { Cautions } from '../../parts/Cautions.tsx';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import type { DrawnLayer } from '../../pictures/Layers.tsx';
import type { Drawn } from '../../pictures/texture.ts';
import { closeSheet, openSheet, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** The sentences of an answer; touching a figure in one lays its range open. */
export function Touched({ sayings, why }: { readonly sayings: readonly Saying[]; readonly why: string }): ReactNode {
  const { sheet } = useRoute();
  const [touched, setTouched] = useState<Touchable | null>(null);
  const figure: Figure | undefined = touched?.figure;
  return (
    <>
      {sayings.map((saying) => (
        <p key={saying.key} className="answer">
          <Sentence
            saying={saying}
            onTouch={(part) => {
              setTouched(part);
              openSheet('figure');
            }}
          />
        </p>
      ))}
      {sheet === 'figure' && touched !== null && (
        <QuantitySheet title={touched.text} figure={figure} chance={touched.chance}>
          <p>{why}</p>
        </QuantitySheet>
      )}
    </>
  );
}

/** What to do, what it is like, what to mind. */
export function Told(properties: {
  readonly advice: readonly Saying[];
  readonly judged: readonly Saying[];
  readonly cautions: readonly CautionId[];
}): ReactNode {
  const { advice, judged, cautions } = properties;
  const speaker = useSpeaker();
  return (
    <>
      <Lines title={speaker.say('app.blend.advice')} sayings={advice} />
      <Lines title={speaker.say('app.blend.like')} sayings={judged} />
      <Cautions ids={cautions} />
    </>
  );
}

function Lines({ title, sayings }: { readonly title: string; readonly sayings: readonly Saying[] }): ReactNode {
  const speaker = useSpeaker();
  if (sayings.length === 0) return null;
  return (
    <section className="section">
      <h2>{title}</h2>
      <ul className="lines">
        {sayings.map((said) => (
          <li key={said.key}>{speaker.tell(said)}</li>
        ))}
      </ul>
    </section>
  );
}

/** How each stuff is drawn. */
const looks: Readonly<Record<PartAmount['part'], Drawn>> = {
  compost: { id: 'finished-compost', particle: 'fine', class: 'starter' },
  'leaf-mould': { id: 'autumn-leaves', particle: 'leafy', class: 'starter' },
  'worm-castings': { id: 'worm-castings', particle: 'pellet', class: 'starter' },
  loam: { id: 'soil', particle: 'lumpy', class: 'starter' },
  sand: { id: 'sand', particle: 'fine', class: 'bulking' },
  charcoal: { id: 'charcoal', particle: 'coarse', class: 'mineral' },
  perlite: { id: 'perlite', particle: 'pellet', class: 'bulking' },
  coir: { id: 'coir', particle: 'stringy', class: 'carbon-rich' },
};

export const woodLook: Drawn = { id: 'wood-chips', particle: 'coarse', class: 'bulking' };

/** The parts one on another, as high as they count by volume. */
export function partLayers(
  parts: readonly PartWords[],
  depth_m: number,
  name: (part: PartAmount['part']) => string,
): readonly DrawnLayer[] {
  return parts.map(({ part, share_pctVolume }) => ({
    material: looks[part],
    thickness_m: (depth_m * share_pctVolume) / 100,
    name: name(part),
    amount: `${Math.round(share_pctVolume)} %`,
  }));
}

/** Takes what was changed on a sheet and closes it. */
export function TakeButton({
  ready = true,
  onTake,
}: {
  readonly ready?: boolean;
  readonly onTake: () => void;
}): ReactNode {
  const speaker = useSpeaker();
  return (
    <button
      type="button"
      className="plain-act strong"
      aria-disabled={!ready}
      onClick={() => {
        if (!ready) return;
        onTake();
        closeSheet();
      }}
    >
      {speaker.say('app.blend.take')}
    </button>
  );
}
