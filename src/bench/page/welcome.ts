import { keepSetting, setting } from "../keeping/settings";
import { jobNotice } from "./notices";

const SEEN = "rillwright.welcomed";

/** The hint of the first visit; it is never shown a second time. */
export function welcome(): void {
  if (setting(SEEN)) return;
  keepSetting(SEEN, "1");
  jobNotice(
    "This is a demo job. Type into the shaded cells and everything else follows; nothing leaves this machine. " +
      "For a job of your own, choose Blank in the pane and Open here.",
  );
}
