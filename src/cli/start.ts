import { existsSync } from "node:fs";
import path from "node:path";
import { FIRST_PORT, serve } from "../site/serve";

/** Serves the built site to this machine, and says where. */
async function main(port: string | undefined): Promise<void> {
  const site = path.join(import.meta.dirname, "../../dist");
  if (!existsSync(path.join(site, "bench.html"))) throw new Error("The site is not built; run npm run build first.");
  const wanted = port === undefined ? FIRST_PORT : Number(port);
  if (!Number.isInteger(wanted) || wanted < 0 || wanted > 65535)
    throw new Error(`PORT must be a whole number from 0 to 65535; got "${port ?? ""}".`);
  const { address } = await serve(site, wanted);
  console.log(`\nThe bench is open, with a demo estimate, at:\n\n  ${address}/bench.html\n\nCtrl+C ends it.`);
}

main(process.env.PORT).catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
});
