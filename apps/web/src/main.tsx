import '@fontsource/atkinson-hyperlegible/400.css';
import '@fontsource/atkinson-hyperlegible/400-italic.css';
import '@fontsource/atkinson-hyperlegible/700.css';
import './look/tokens.css';
import './look/base.css';
import './look/controls.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { takeKeyFromAddress } from './device/arrive.ts';
import { wearTheme } from './device/theme.ts';
import { App } from './shell/App.tsx';
import { Words } from './shell/words.tsx';

takeKeyFromAddress();
wearTheme();

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no element #root to stand in');
createRoot(root).render(
  <StrictMode>
    <Words>
      <App />
    </Words>
  </StrictMode>,
);

if ('serviceWorker' in navigator && import.meta.env.PROD) {
  // After the first screen stands: keeping the app offline must not hold it up.
  import('./device/offline.ts').then(({ keepOffline }) => keepOffline()).catch(() => undefined);
}
// Likewise the exchange with a computer that keeps a daybook.
import('./keep/background.ts').then(({ exchangeInBackground }) => exchangeInBackground()).catch(() => undefined);
