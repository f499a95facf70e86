import { mkdtempSync, writeFileSync } from "node:fs";
import type { Server } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { serve } from "../../src/site/serve";

let folder: string;
const servers: Server[] = [];

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "site-"));
  for (const name of ["bench.html", "functions.json", "bench.0123abcd.js", "job.xlsx"])
    writeFileSync(path.join(folder, name), "content");
});

afterEach(() => {
  for (const server of servers.splice(0)) server.close();
});

async function start(port = 0): Promise<string> {
  const { server, address } = await serve(folder, port);
  servers.push(server);
  return address;
}

describe("the server of the bench", () => {
  it("sends pages with a policy that allows no code but files", async () => {
    const answer = await fetch(`${await start()}/bench.html`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toContain("text/html");
    const policy = answer.headers.get("content-security-policy") ?? "";
    expect(policy).toContain("script-src 'self'");
    expect(/script-src[^;]*/.exec(policy)?.[0]).not.toMatch(/unsafe|\*|data:|blob:/);
    expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
  });

  it("lets a browser keep files with a hash, and ask again for all others", async () => {
    const address = await start();
    const cache = async (name: string): Promise<string | null> =>
      (await fetch(`${address}/${name}`)).headers.get("cache-control");
    expect(await cache("bench.0123abcd.js")).toContain("immutable");
    expect(await cache("bench.html")).toBe("no-cache");
    expect(await cache("functions.json")).toBe("no-cache");
  });

  it("lets Excel on the web read functions.json from another origin", async () => {
    expect((await fetch(`${await start()}/functions.json`)).headers.get("access-control-allow-origin")).toBe("*");
  });

  it("sends workbooks as workbooks", async () => {
    expect((await fetch(`${await start()}/job.xlsx`)).headers.get("content-type")).toContain("spreadsheetml");
  });

  it("answers in words where nothing is, and never leaves its folder", async () => {
    const address = await start();
    for (const wrong of ["/nothing.html", "/../package.json", "/%2e%2e/package.json", "/..%2fpackage.json", "/%00"]) {
      const answer = await fetch(address + wrong);
      expect(answer.status, wrong).toBe(404);
      expect(await answer.text()).toContain("Nothing is at this address");
    }
  });

  it("takes the next port when one is in use", async () => {
    const first = Number(new URL(await start()).port);
    const second = Number(new URL(await start(first)).port);
    expect(second).toBeGreaterThan(first);
  });
});
