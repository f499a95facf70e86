/** The files of one build, and what each must be: "sha256-…" by its address within the site. */
export interface SiteFiles {
  readonly version: string;
  readonly files: Readonly<Record<string, string>>;
}

const SHELF = "rillwright";
/** So many files are fetched at once. */
const AT_ONCE = 6;
/** A storage that says nothing for so long is passed by. */
const LONGEST_LOOK_MS = 2000;

/**
 * Keeps a whole build, each file checked to be the one that was built: a sign-in page, an error or a file of another
 * build is refused. Where one file cannot be had or kept, none of them is, and what was kept before stays.
 */
export async function keepAll({ version, files }: SiteFiles, scope: string): Promise<void> {
  const shelf = await caches.open(shelfName(version));
  const waiting = Object.entries(files);
  const next = async (): Promise<void> => {
    for (let one = waiting.shift(); one; one = waiting.shift()) {
      const [name, integrity] = one;
      const address = new URL(name, scope).href;
      const fresh = await fetch(new Request(address, { cache: "no-cache", integrity, redirect: "error" }));
      if (!fresh.ok) throw new Error(`${name}: the server answered ${fresh.status}`);
      await shelf.put(address, fresh);
    }
  };
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, next));
  } catch (error) {
    waiting.length = 0;
    await caches.delete(shelfName(version));
    throw error;
  }
}

/** Puts away what other builds left. */
export async function keepOnly({ version }: SiteFiles): Promise<void> {
  const old = (await caches.keys()).filter((name) => name.startsWith(SHELF) && name !== shelfName(version));
  await Promise.all(old.map((name) => caches.delete(name)));
}

/** The address of a file of the set that a request asks for; undefined for all else. */
export function addressInSet(request: Request, { files }: SiteFiles, scope: string): string | undefined {
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || !(origin + pathname).startsWith(scope)) return undefined;
  const name = decoded((origin + pathname).slice(scope.length));
  const file = name === "" || name.endsWith("/") ? `${name}index.html` : name;
  return file in files ? new URL(file, scope).href : undefined;
}

/** The kept file; the server's where the browser has lost it, or does not say. */
export async function answer(request: Request, address: string, { version }: SiteFiles): Promise<Response> {
  const look = async (): Promise<Response | undefined> => (await caches.open(shelfName(version))).match(address);
  const late = new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), LONGEST_LOOK_MS));
  const kept = await Promise.race([look().catch(() => undefined), late]);
  return kept ?? fetch(request);
}

function decoded(path: string): string {
  try {
    return decodeURI(path);
  } catch {
    return path;
  }
}

function shelfName(version: string): string {
  return `${SHELF}-${version}`;
}
