/** What the browser says about what is kept here. */
export interface StorageStanding {
  /** Whether it has promised not to clear it by itself; null where it does not say. */
  readonly persistent: boolean | null;
  readonly used_bytes: number | null;
}

/** Asks the browser to keep the daybook even when the device runs short of space. It may say no. */
export async function askToPersist(): Promise<StorageStanding> {
  const { storage } = navigator;
  // Absent where the page does not come over a secure connection.
  if (storage?.persist === undefined) return { persistent: null, used_bytes: null };
  const persistent = (await storage.persisted()) || (await storage.persist());
  const { usage } = await storage.estimate();
  return { persistent, used_bytes: usage ?? null };
}
