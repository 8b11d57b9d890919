import { registerSW } from 'virtual:pwa-register';
import { hideNotice, showNotice } from '../shell/notice.ts';

/**
 * Keeps the app itself on the device, so that it opens with the network off. A newer version waits until the
 * person takes it: nothing is reloaded under their hands.
 */
export function keepOffline(): void {
  const take = registerSW({
    onNeedRefresh: () =>
      showNotice({
        id: 'update',
        saying: { key: 'app.update.ready' },
        act: {
          saying: { key: 'app.update.take' },
          onAct: () => {
            hideNotice('update');
            take(true).catch(() => location.reload());
          },
        },
      }),
  });
}
