import { materialReport } from '@loamwright/advisor';
import { lazy, type ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { MaterialSearch } from '../../parts/MaterialSearch.tsx';
import { Page } from '../../shell/Page.tsx';
import { go, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { MaterialPage } from './MaterialPage.tsx';

const checks = {
  is: lazy(() => import('./SayWet.tsx')),
  squeeze: lazy(() => import('./Squeeze.tsx')),
  dried: lazy(() => import('./Dried.tsx')),
  bucket: lazy(() => import('./Bucket.tsx')),
  settled: lazy(() => import('./Settled.tsx')),
  own: lazy(() => import('./OwnLike.tsx')),
} as const;

/** Every material to be found; or one, and what is said and measured of it. */
export default function Material({ id, page }: { readonly id: string | undefined; readonly page: string }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  if (id === undefined) {
    return (
      <Page question={speaker.say('app.materials.question')}>
        <MaterialSearch without={[]} onPick={(material) => go(to('material', material))} />
      </Page>
    );
  }
  const report = materialReport(holding, id);
  if (!report.ok) {
    return (
      <Page
        question={speaker.say('app.materials.question')}
        act={{ text: speaker.say('app.material.find'), href: to('material') }}
      >
        <p className="answer">{speaker.say('app.material.unknown')}</p>
      </Page>
    );
  }
  if (isCheck(page)) {
    const Check = checks[page];
    return <Check id={id} />;
  }
  return <MaterialPage report={report.value} />;
}

function isCheck(page: string): page is keyof typeof checks {
  return Object.hasOwn(checks, page);
}
