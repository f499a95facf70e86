/** Where the add-in is served while it is being worked on; every committed address begins with it. */
export const WORKING_ADDRESS = "https://localhost:3000";

/** The base address of a build, without a slash at its end; the working address when none is given. */
export function baseAddress(asked: string | undefined): string {
  if (asked === undefined) return WORKING_ADDRESS;
  const address = URL.canParse(asked) ? new URL(asked) : undefined;
  if (address?.protocol !== "https:" || address.search !== "" || address.hash !== "") {
    throw new Error(`base must be an https address such as https://example.org/rillwright; got "${asked}"`);
  }
  return address.href.replace(/\/+$/, "");
}

/** A committed text with the working address turned into the base address of the build. */
export function atBase(text: string, base: string): string {
  return text.replaceAll(WORKING_ADDRESS, base);
}
