const BLANK_TEMPLATE = /^rillwright-(us|si)-blank\.xlsx$/;
const LONGEST = 80;

/** The name a job is saved under: its file's, but that of the job where it began from the blank template. */
export function fileNameOf(opened: string, jobName: string): string {
  if (!BLANK_TEMPLATE.test(opened)) return opened;
  const name = jobName
    // What no file system of today takes in a name.
    // eslint-disable-next-line no-control-regex
    .replace(/[<>:"/\\|?*\u0000-\u001f]/g, " ")
    .replace(/\s+/g, " ")
    .slice(0, LONGEST)
    .replace(/^[. ]+|[. ]+$/g, "");
  return name === "" ? opened : `${name}.xlsx`;
}
