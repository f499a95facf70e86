/** Places in the browser's storage where open pages keep their jobs, one for each page. */
const SLOTS = ["current", "current-2", "current-3", "current-4", "current-5", "current-6"];
/** The page's own place, which outlives a reload. */
const OWN = "rillwright.slot";
/** A page that is reloaded may still hold its place for a moment. */
const LET_GO_MS = 800;

/**
 * Takes a place that no other open page holds, until this page goes: its own of before a reload, or the first free
 * of `wanted`, or any. A browser without locks knows one place only.
 */
export async function takeSlot(wanted: readonly string[]): Promise<string> {
  const [first = ""] = SLOTS;
  if (!("locks" in navigator)) return first;
  const own = ownSlot();
  if (own !== undefined && (await hold(own, LET_GO_MS))) return own;
  for (const slot of [...wanted, ...SLOTS]) {
    if (!(await hold(slot))) continue;
    rememberOwn(slot);
    return slot;
  }
  return first;
}

/** The places that open pages hold. */
export async function heldSlots(): Promise<Set<string>> {
  if (!("locks" in navigator)) return new Set(SLOTS);
  const { held = [] } = await navigator.locks.query();
  return new Set(SLOTS.filter((slot) => held.some(({ name }) => name === lockName(slot))));
}

function lockName(slot: string): string {
  return `rillwright.${slot}`;
}

/** Takes hold of a place, waiting for it at most so long; it is let go when the page goes. */
function hold(slot: string, wait?: number): Promise<boolean> {
  const how: LockOptions = wait === undefined ? { ifAvailable: true } : { signal: AbortSignal.timeout(wait) };
  return new Promise((resolve) => {
    navigator.locks
      .request(lockName(slot), how, (lock) => {
        resolve(lock !== null);
        return lock === null ? undefined : new Promise<void>(() => undefined);
      })
      .catch(() => resolve(false));
  });
}

function ownSlot(): string | undefined {
  try {
    const own = sessionStorage.getItem(OWN);
    return own !== null && SLOTS.includes(own) ? own : undefined;
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
