import { expect, it } from "vitest";
import { keptElsewhere } from "../../../src/bench/keeping/otherPorts";

it("finds the newest work of each other port of the machine", () => {
  const own = new URL("http://localhost:4821/bench.html");
  const cookies =
    "theirs=1; rillwright-draft-4820-current=1000; rillwright-draft-4820-current-2=3000; " +
    "rillwright-draft-4821-current=9000; rillwright-draft-4822-current=";
  expect(keptElsewhere(cookies, own)).toEqual([{ address: "http://localhost:4820/bench.html", at: 3000 }]);
});
