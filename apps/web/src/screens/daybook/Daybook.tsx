import '@loamwright/words/later';
import type { ReactNode } from 'react';
import { AmendPage } from './AmendPage.tsx';
import { EntryPage } from './EntryPage.tsx';
import { KeepingPage } from './KeepingPage.tsx';
import { LinesPage } from './LinesPage.tsx';

interface Properties {
  /** Id of an entry, `kept` for where the daybook lies, or nothing for the lines themselves. */
  readonly entry: string | undefined;
  readonly page: string | undefined;
}

export default function DaybookAt({ entry, page }: Properties): ReactNode {
  if (entry === undefined) return <LinesPage />;
  if (entry === 'kept') return <KeepingPage />;
  return page === 'amend' ? <AmendPage key={entry} id={entry} /> : <EntryPage key={entry} id={entry} />;
}
