import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { act, asks, begin, fiveMaterials, sayWhatIsHere } from './app-steps.ts';
import { faults, smallTargets } from './audit.ts';
import { journey, launch, openPhone } from './chromium.ts';
import { type Served, serve } from './serve.ts';

const themes = ['light', 'dark', 'sunlight'] as const;

/** A screen as it is reached in the demo: its address after `#/`, and how it is known to stand. */
interface Screen {
  readonly path: string;
  readonly stands: string;
}

/** Every page and sheet of the app, with a heap and a line of the demo. */
function screens(heap: string, entry: string): readonly Screen[] {
  const at = (path: string, stands: string): Screen => ({ path, stands });
  return [
    at('bins', '.mounds svg'),
    at('bins?sheet=add', 'dialog [role=option]'),
    at('bins?sheet=amount%3Astraw', 'dialog .steps'),
    at('bins?sheet=bay', 'dialog .field'),
    at('bins/mix', '.picture svg'),
    at('bins/mix?sheet=stuff%3A0', 'dialog svg'),
    at('bins/mix?sheet=water', 'dialog .field'),
    at('bins/mix?sheet=judged%3Amoisture_pctWet', 'dialog svg'),
    at('bins/would', '.picture svg'),
    at('bins/would?sheet=here', 'dialog .choices'),
    at('bins/would?sheet=figure%3Apeak', 'dialog svg'),
    at('bins/card', '.steps-down li'),
    at('bins/card?sheet=built', 'dialog .field'),
    at('harvest', '.choices'),
    at('potting', '.picture svg'),
    at('potting?sheet=pots', 'dialog .steps'),
    at('potting?sheet=compost', 'dialog .field'),
    at('fill-bed', '.picture svg'),
    at('fill-bed?sheet=bed', 'dialog .field'),
    at('fill-bed?sheet=compost', 'dialog .field'),
    at('pail', '.picture svg'),
    at('pail?sheet=bin', 'dialog .plain-act'),
    at('pail?sheet=seen', 'dialog .field'),
    at(`pail/${heap}`, '.picture svg'),
    at('heaps', '.heap-lines'),
    at(`heap/${heap}`, '.picture svg'),
    at(`heap/${heap}/reading`, '.field'),
    at(`heap/${heap}/turned`, '.choices'),
    at(`heap/${heap}/watered`, '.field'),
    at(`heap/${heap}/fed`, '.answer'),
    at(`heap/${heap}/covered`, '.choices'),
    at(`heap/${heap}/note`, 'textarea'),
    at(`heap/${heap}/ready`, '.field'),
    at(`heap/${heap}/spread`, '.choices'),
    at(`heap/${heap}/yield`, '.picture svg'),
    at(`heap/${heap}/ripe`, '.choices'),
    at(`heap/${heap}/clauses`, '.choices'),
    at('clauses', '.lines'),
    at('clauses/new', '.choices'),
    at(`heap/${heap}/safe`, '.choices'),
    at(`heap/${heap}/would`, '.picture svg'),
    at(`heap/${heap}/record`, 'ol.lines li'),
    at('balance', '.choices'),
    at('beds', '.lines'),
    at('beds/new', '.field'),
    at('bed/kale', '.picture svg'),
    at('bed/kale/sown', '.search'),
    at('bed/kale/put', '.choices'),
    at('bed/kale/tested', '.field'),
    at('bed/kale/harvested', '.choices'),
    at('bed/kale/change', '.field'),
    at('bed/kale/rate', '.answer'),
    at('bed/kale/record', 'ol.lines li'),
    at('bed/kale/years', '.picture svg'),
    at('material', '[role=option]'),
    at('material/straw', '.picture svg'),
    at('material/straw?sheet=fact%3Amoisture_pctWet', 'dialog a'),
    at('material/straw/is', '.choices'),
    at('material/straw/squeeze', '.choices'),
    at('material/straw/dried', '.field'),
    at('material/straw/bucket', '.field'),
    at('material/straw/settled', '.field'),
    at('material/straw/own', '.field'),
    at('daybook', '.lines'),
    at(`daybook/${entry}`, '.facts'),
    at(`daybook/${entry}/amend`, '.choices'),
    at('daybook/kept', '.section'),
    at('settings', '.choices'),
    at('about', '.lines'),
  ];
}

describe('every screen of the app', () => {
  let browser: Browser;
  let served: Served;
  beforeAll(async () => {
    [browser, served] = await Promise.all([launch(), serve()]);
  });
  afterAll(async () => {
    await browser?.close();
    await served?.stop();
  });

  for (const theme of themes) {
    journey(`is clean to axe in the ${theme} theme`, async () => {
      const { page, close } = await openPhone(browser);
      await page.goto(served.address);
      await asks(page, 'What is this?');
      await wear(page, theme);
      const found = [...(await faults(page, `welcome ${theme}`))];
      const all = await inTheDemo(page);
      for (const screen of all) {
        await show(page, served, screen);
        found.push(...(await faults(page, `${screen.path} ${theme}`)));
      }
      expect(found).toEqual([]);
      await close();
    });
  }

  journey('fits a narrow phone and letters twice as large, with nothing to scroll sideways', async () => {
    const { page, close } = await openPhone(browser);
    await page.goto(served.address);
    const all = await inTheDemo(page);
    const tooWide: string[] = [];
    for (const { width, letters } of [
      { width: 320, letters: 100 },
      { width: 390, letters: 200 },
    ]) {
      await page.setViewportSize({ width, height: 844 });
      for (const screen of all) {
        await show(page, served, screen);
        const over = await page.evaluate((percent) => {
          document.documentElement.style.fontSize = `${percent}%`;
          const { scrollWidth, clientWidth } = document.documentElement;
          const sheet = document.querySelector('dialog');
          return Math.max(scrollWidth - clientWidth, sheet === null ? 0 : sheet.scrollWidth - sheet.clientWidth);
        }, letters);
        if (over > 0) tooWide.push(`${screen.path}: ${over} px too wide at ${width} px and ${letters} %`);
      }
    }
    expect(tooWide).toEqual([]);
    await close();
  });

  journey('has targets of 48 px for whatever stands by itself', async () => {
    const { page, close } = await openPhone(browser);
    await page.goto(served.address);
    const small: string[] = [];
    for (const screen of await inTheDemo(page)) {
      await show(page, served, screen);
      small.push(...(await smallTargets(page, screen.path)));
    }
    expect(small).toEqual([]);
    await close();
  });

  journey('is walked with the keyboard alone, from what is here to a mix', async () => {
    const { page, errors, close } = await openPhone(browser);
    await page.goto(served.address);
    await begin(page, '°C, litres, metres');
    await tabTo(page, 'Say what is here');
    await page.keyboard.press('Enter');
    await page.getByRole('searchbox').and(page.locator(':focus')).waitFor();
    await page.keyboard.type('coffee grounds');
    await page.getByRole('option', { name: 'coffee grounds' }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog', { name: 'How much coffee grounds?' }).waitFor();
    await tabTo(page, 'It is here');
    await page.keyboard.press('Enter');
    await page.getByText('of coffee grounds').first().waitFor();
    await tabTo(page, '1 bucket');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await tabTo(page, 'Work out a mix');
    await page.keyboard.press('Enter');
    await asks(page, 'What do I lay, and how much of each?');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
    expect(errors).toEqual([]);
    await close();
  });

  journey('moves nothing for those who asked for it', async () => {
    const { page, close } = await openPhone(browser, { reducedMotion: 'reduce' });
    await page.goto(served.address);
    for (const screen of await inTheDemo(page)) {
      await show(page, served, screen);
      expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    }
    await close();
  });
});

/** Opens the demo with something at the bins, and gives its screens. */
async function inTheDemo(page: Page): Promise<readonly Screen[]> {
  await page.getByRole('button', { name: 'Look round Quarry Lane' }).click();
  await asks(page, 'What stands where?');
  const heap = await page.locator('.heap-lines a').first().getAttribute('href');
  await page.getByRole('link', { name: 'Bins' }).click();
  await asks(page, 'What is here to build from?');
  await sayWhatIsHere(page, fiveMaterials);
  await page.goto(page.url().replace(/#.*$/u, '#/clauses/new'));
  await page.getByLabel('What it is about').selectOption({ label: 'behind the house' });
  await act(page, 'Keep the rule');
  await asks(page, 'What are the rules of the place?');
  await page.getByRole('link', { name: 'Daybook' }).click();
  await asks(page, 'What was done, and when?');
  const entry = await page.locator('main .lines a', { hasText: ' read ' }).first().getAttribute('href');
  return screens(heap?.split('/').at(-1) ?? '', entry?.split('/').at(-1) ?? '');
}

async function show(page: Page, served: Served, { path, stands }: Screen): Promise<void> {
  await page.goto(`${served.address}/#/${path}`);
  await page.locator(stands).first().waitFor();
}

async function wear(page: Page, theme: (typeof themes)[number]): Promise<void> {
  await page.evaluate((chosen) => {
    const kept = JSON.parse(localStorage.getItem('loamwright.settings') ?? '{}');
    localStorage.setItem('loamwright.settings', JSON.stringify({ ...kept, theme: chosen }));
  }, theme);
  await page.reload();
  await page.locator('h1').waitFor();
  expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe(theme);
}

/** Goes on with the tab key until something of this name has the focus, and can be seen to have it. */
async function tabTo(page: Page, name: string): Promise<void> {
  const MOST_STEPS = 60;
  for (let step = 0; step < MOST_STEPS; step++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      return {
        text: element?.textContent ?? '',
        outline: element === null ? '' : getComputedStyle(element).outlineStyle,
      };
    });
    if (focused.text.trim() !== name) continue;
    expect(focused.outline).toBe('solid');
    return;
  }
  throw new Error(`the tab key never came to ${name}`);
}
