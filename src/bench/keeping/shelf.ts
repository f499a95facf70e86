const SHELF = "rillwright";

/** The newest copy from the server, kept for later; the kept one when there is no network. */
export async function answer(request: Request): Promise<Response> {
  const shelf = await caches.open(SHELF);
  try {
    const fresh = await fetch(request);
    if (fresh.ok) await shelf.put(request, fresh.clone());
    return fresh;
  } catch (error) {
    const kept = await shelf.match(request, { ignoreSearch: true });
    if (kept) return kept;
    throw error;
  }
}

/** Keeps files that are not kept yet, as those loaded before the worker stood between page and server. */
export async function keep(addresses: readonly string[]): Promise<void> {
  const shelf = await caches.open(SHELF);
  const one = async (address: string): Promise<void> => {
    if (!(await shelf.match(address))) await shelf.add(address);
  };
  await Promise.all(addresses.map((address) => one(address).catch(() => undefined)));
}
