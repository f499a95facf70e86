/** Small settings of this browser; where it keeps nothing, they last as long as the page. */
const here = new Map<string, string>();

export function setting(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? here.get(key);
  } catch {
    return here.get(key);
  }
}

export function keepSetting(key: string, value: string): void {
  here.set(key, value);
  try {
    localStorage.setItem(key, value);
  } catch {
    // Blocked or full: the page goes on without.
  }
}
