/** Places in the browser's storage where open pages keep their jobs, one for each page: "current", "current-2" and on. */
const FIRST = "current";
const SLOT = /^current(-\d+)?$/;
/** The page's own place, which outlives a reload. */
const OWN = "rillwright.slot";
/** Begins the names of the locks that open pages hold. */
const LOCK = "rillwright.";
/** A page that is reloaded may still hold its place for a moment. */
const LET_GO_MS = 800;

/** Whether a record of the storage is a page's job. */
export function isSlot(key: string): boolean {
  return SLOT.test(key);
}

/**
 * Takes a place that no other open page holds, until this page goes: its own of before a reload, or the first free
 * of `wanted`, or a new one. A browser without locks knows one place only.
 */
export async function takeSlot(wanted: readonly string[]): Promise<string> {
  if (!("locks" in navigator)) return FIRST;
  const own = ownSlot();
  if (own !== undefined && (await hold(own, LET_GO_MS))) return own;
  for (const slot of placesFrom(wanted)) {
    if (!(await hold(slot))) continue;
    rememberOwn(slot);
    return slot;
  }
  // No place can be held: one that no other page will take.
  return `${FIRST}-${Date.now()}`;
}

/** Pages that may be open at once. */
const MOST_PAGES = 500;

/** The wanted places, then all others. */
function* placesFrom(wanted: readonly string[]): Generator<string> {
  yield* wanted;
  yield FIRST;
  for (let number = 2; number <= MOST_PAGES; number++) yield `${FIRST}-${number}`;
}

/** The places that open pages hold. */
export async function heldSlots(): Promise<Set<string>> {
  if (!("locks" in navigator)) return new Set([FIRST]);
  const { held = [] } = await navigator.locks.query();
  const names = held.map(({ name = "" }) => name).filter((name) => name.startsWith(LOCK));
  return new Set(names.map((name) => name.slice(LOCK.length)).filter(isSlot));
}

/** Takes hold of a place, waiting for it at most so long; it is let go when the page goes. */
function hold(slot: string, wait?: number): Promise<boolean> {
  const how: LockOptions = wait === undefined ? { ifAvailable: true } : { signal: AbortSignal.timeout(wait) };
  return new Promise((resolve) => {
    navigator.locks
      .request(LOCK + slot, how, (lock) => {
        resolve(lock !== null);
        return lock === null ? undefined : new Promise<void>(() => undefined);
      })
      .catch(() => resolve(false));
  });
}

function ownSlot(): string | undefined {
  try {
    const own = sessionStorage.getItem(OWN);
    return own !== null && isSlot(own) ? own : undefined;
  } catch {
    return undefined;
  }
}

function rememberOwn(slot: string): void {
  try {
    sessionStorage.setItem(OWN, slot);
  } catch {
    // Without it a reload takes the job that was kept last, which is nearly always the same one.
  }
}
