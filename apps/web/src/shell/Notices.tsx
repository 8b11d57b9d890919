import type { ReactNode } from 'react';
import { changeSettings, settings, useSettings } from '../device/settings.ts';
import { type Notice, useNotices } from './notice.ts';
import { go, to } from './route.ts';
import { useSpeaker } from './words.tsx';

export function Notices(): ReactNode {
  const speaker = useSpeaker();
  const demo = useSettings().book === 'demo';
  const notices = useNotices();
  return (
    <div role="status">
      {(demo ? [demoNotice, ...notices] : notices).map(({ id, saying, act }) => (
        <div key={id} className="notice">
          <p>{speaker.tell(saying)}</p>
          {act !== undefined && (
            <button type="button" className="word" onClick={act.onAct}>
              {speaker.tell(act.saying)}
            </button>
          )}
        </div>
      ))}
    </div>
  );
}

/** Says on every page that this is the demo; one touch lets it go, with everything in it. */
const demoNotice: Notice = {
  id: 'demo',
  saying: { key: 'app.demo.here' },
  act: { saying: { key: 'app.demo.leave' }, onAct: leaveDemo },
};

function leaveDemo(): void {
  changeSettings({ book: settings().begun ? 'own' : null });
  go(to());
  import('../keep/shelf.ts').then(({ letDemoGo }) => letDemoGo()).catch(() => undefined);
}
