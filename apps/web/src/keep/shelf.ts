import { openIndexedDbKeeping } from '@loamwright/store/indexeddb';
import { deleteDB } from 'idb';
import { v7 } from 'uuid';
import { changeSettings, personId, settings } from '../device/settings.ts';
import { asRecord, stored } from '../device/stored.ts';
import { clearDemoBins } from '../mix/draft.ts';
import { type Book, openBook, refusedBook, type Writer } from './book.ts';

/** The own daybook, or that of the demo garden: each has a database of its own. */
export type BookName = 'own' | 'demo';

const databases: Readonly<Record<BookName, string>> = { own: 'loamwright', demo: 'loamwright-demo' };
const opened = new Map<BookName, Promise<Book>>();

/** Opens a daybook once and keeps it open. Where the browser refuses, the book says so; nothing is thrown. */
export function bookNamed(name: BookName): Promise<Book> {
  const known = opened.get(name);
  if (known !== undefined) return known;
  const opening = open(name);
  opened.set(name, opening);
  return opening;
}

async function open(name: BookName): Promise<Book> {
  try {
    const book = await openBook(name, await openIndexedDbKeeping(databases[name]));
    if (name === 'demo' && book.leaf().entries.length === 0) await fillDemo(book);
    return book;
  } catch (error) {
    return refusedBook(error instanceof Error ? error.message : String(error));
  }
}

/** Lays the made-up year of Quarry Lane into the demo's own database. */
async function fillDemo(book: Book): Promise<void> {
  const { quarryLaneUntilToday } = await import('./demo.ts');
  await book.change((keeping) => keeping.keep(quarryLaneUntilToday()));
}

/** Lets the demo go: its database is deleted, and nothing of it was ever anywhere else. */
export async function letDemoGo(): Promise<void> {
  const demo = await opened.get('demo');
  opened.delete('demo');
  await demo?.close();
  clearDemoBins();
  await deleteDB(databases.demo);
}

const deviceIds = stored('loamwright.devices', (raw): Readonly<Partial<Record<BookName, string>>> => {
  const found = asRecord(raw);
  const id = (name: BookName): Partial<Record<BookName, string>> =>
    typeof found[name] === 'string' ? { [name]: found[name] } : {};
  return { ...id('own'), ...id('demo') };
});

/**
 * Who writes here. A device keeps its id only as long as its entries lie here: were they lost and the id kept,
 * the device would count from 1 again and two entries would claim one number.
 */
export async function writerOf(name: BookName, book: Book): Promise<Writer> {
  const { entries, holding } = book.leaf();
  const remembered = deviceIds.get()[name];
  const known = remembered !== undefined && entries.some(({ device }) => device === remembered);
  const device = known ? remembered : v7();
  if (!known) deviceIds.set({ ...deviceIds.get(), [name]: device });
  return { device, holding: holding.id ?? ownHolding(), by: personId(settings().person) };
}

function ownHolding(): string {
  const held = settings().holding;
  if (held !== null) return held;
  const made = v7();
  changeSettings({ holding: made });
  return made;
}
