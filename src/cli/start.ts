import { existsSync } from "node:fs";
import path from "node:path";
import { FIRST_PORT, serve } from "../site/serve";

const site = path.join(import.meta.dirname, "../../dist");
if (!existsSync(path.join(site, "bench.html"))) throw new Error("the site is not built; run npm run build first");

const wanted = process.env.PORT === undefined ? FIRST_PORT : Number(process.env.PORT);
if (!Number.isInteger(wanted) || wanted < 0 || wanted > 65535)
  throw new Error(`PORT must be 0 to 65535; got "${process.env.PORT}"`);

const { address } = await serve(site, wanted);
console.log(`\nThe bench is open, with a demo estimate, at:\n\n  ${address}/bench.html\n\nCtrl+C ends it.`);
