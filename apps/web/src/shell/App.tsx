import { lazy, type ReactNode, Suspense } from 'react';
import { useSettings } from '../device/settings.ts';
import { Welcome } from '../screens/Welcome.tsx';
import { Failure } from './Failure.tsx';
import { useRoute } from './route.ts';

const Settings = lazy(() => import('../screens/settings/Settings.tsx'));
const About = lazy(() => import('../screens/about/About.tsx'));
const Bins = lazy(() => import('../screens/bins/Bins.tsx'));
const Mix = lazy(() => import('../screens/mix/Mix.tsx'));
const Would = lazy(() => import('../screens/would/Would.tsx'));
const Card = lazy(() => import('../screens/card/Card.tsx'));
const Heaps = lazy(() => import('../screens/heaps/Heaps.tsx'));
const Harvest = lazy(() => import('../screens/harvest/Harvest.tsx'));
const Balance = lazy(() => import('../screens/balance/Balance.tsx'));
const Clauses = lazy(() => import('../screens/clauses/Clauses.tsx'));
const AddClause = lazy(() => import('../screens/clauses/AddClause.tsx'));
const Beds = lazy(() => import('../screens/bed/Beds.tsx'));
const SetUpBed = lazy(() => import('../screens/bed/SetUpBed.tsx'));
const Bed = lazy(() => import('../screens/bed/Bed.tsx'));
const Heap = lazy(() => import('../screens/heap/Heap.tsx'));
const Potting = lazy(() => import('../screens/blend/Potting.tsx'));
const FillBed = lazy(() => import('../screens/blend/FillBed.tsx'));
const Pail = lazy(() => import('../screens/pail/Pail.tsx'));
const Material = lazy(() => import('../screens/material/Material.tsx'));
const Daybook = lazy(() => import('../screens/daybook/Daybook.tsx'));

/** The page for the address. Before a daybook is begun there is only the first page, and what the program is. */
export function App(): ReactNode {
  const { book } = useSettings();
  const { path } = useRoute();
  const [first = 'bins'] = path;
  return (
    <Failure key={path.join('/')}>
      <Suspense fallback={null}>{book === null && first !== 'about' ? <Welcome /> : pageFor(first, path)}</Suspense>
    </Failure>
  );
}

function pageFor(first: string, path: readonly string[]): ReactNode {
  const [, second, third] = path;
  switch (first) {
    case 'heaps':
      return <Heaps />;
    case 'heap':
      return <Heap key={second} heap={second ?? ''} page={third ?? ''} />;
    case 'balance':
      return <Balance />;
    case 'clauses':
      return second === 'new' ? <AddClause /> : <Clauses />;
    case 'beds':
      return second === 'new' ? <SetUpBed /> : <Beds />;
    case 'bed':
      return <Bed key={path.join('/')} bed={second ?? ''} page={third ?? ''} />;
    case 'material':
      return <Material key={path.join('/')} id={second} page={third ?? ''} />;
    case 'daybook':
      return <Daybook entry={second} page={third} />;
    case 'harvest':
      return <Harvest />;
    case 'potting':
      return <Potting />;
    case 'fill-bed':
      return <FillBed />;
    case 'pail':
      return <Pail key={second} heap={second} />;
    case 'settings':
      return <Settings />;
    case 'about':
      return <About source={second} />;
    default:
      if (second === 'mix') return <Mix />;
      if (second === 'would') return <Would />;
      if (second === 'card') return <Card />;
      return <Bins />;
  }
}
