const FIRST_TEMPLATE = "rillwright-us-demo.xlsx";

let fetched: Promise<{ readonly fileName: string; readonly bytes: Uint8Array }> | undefined;

/** The job that a first visit opens; it is fetched once. */
export function demoFile(): NonNullable<typeof fetched> {
  fetched ??= fetchDemo();
  return fetched;
}

async function fetchDemo(): Promise<{ readonly fileName: string; readonly bytes: Uint8Array }> {
  const answer = await fetch(`templates/${FIRST_TEMPLATE}`);
  if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
  return { fileName: FIRST_TEMPLATE, bytes: new Uint8Array(await answer.arrayBuffer()) };
}
