import { onSettings, settings } from './settings.ts';

/** Puts the chosen theme on the page and keeps it there; `auto` follows the phone as it changes. */
export function wearTheme(): void {
  const night = globalThis.matchMedia('(prefers-color-scheme: dark)');
  const wear = (): void => {
    const { theme } = settings();
    document.documentElement.dataset['theme'] = theme === 'auto' ? (night.matches ? 'dark' : 'light') : theme;
  };
  night.addEventListener('change', wear);
  onSettings(wear);
  wear();
}
