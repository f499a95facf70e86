import { notice } from "./notices";

const SEEN = "rillwright.welcomed";

/** The hint of the first visit; closing it is enough never to see it again. */
export function welcome(): void {
  if (localStorage.getItem(SEEN)) return;
  localStorage.setItem(SEEN, "1");
  notice(
    "This is a demo job. Type into the tinted cells: everything else follows. Nothing leaves this machine. " +
      "When it is yours, choose Save .xlsx; to begin your own, use Start a job in the pane.",
  );
}
