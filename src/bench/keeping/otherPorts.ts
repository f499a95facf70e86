/** Unsaved work that is kept under another address of this machine. */
export interface KeptElsewhere {
  readonly address: string;
  readonly at: number;
}

const NAME = "rillwright-draft";
const DAYS = 30;
const OWN_MACHINE = /^(localhost|127\.0\.0\.1)$/;

/**
 * Notes for pages from other ports of this machine that work is kept here, which the browser hides from them. A cookie
 * knows no ports. It says when and where, and nothing of the job; on any other machine there is none, since it would be
 * sent to the server.
 */
export function noteKept(slot: string, at: number | undefined): void {
  if (!OWN_MACHINE.test(location.hostname)) return;
  const days = at === undefined ? 0 : DAYS;
  document.cookie = `${NAME}-${location.port}-${slot}=${at ?? ""}; path=/; max-age=${days * 86_400}; samesite=strict`;
}

/** The newest unsaved work of each other port of this machine. */
export function keptElsewhere(cookies = document.cookie, own: URL | Location = location): KeptElsewhere[] {
  const newest = new Map<string, number>();
  for (const [, port = "", at] of cookies.matchAll(/(?:^|;\s*)rillwright-draft-(\d*)-current[^=;]*=(\d+)/g)) {
    if (port !== own.port) newest.set(port, Math.max(Number(at), newest.get(port) ?? 0));
  }
  return [...newest].map(([port, at]) => ({
    address: `${own.protocol}//${own.hostname}${port === "" ? "" : `:${port}`}${own.pathname}`,
    at,
  }));
}
