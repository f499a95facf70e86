import { readFileSync } from "node:fs";
import path from "node:path";
import type { Compiler, Module } from "webpack";
import { catalogue, loadLater } from "../functions/catalogue";
import { functionsJson } from "../functions/contract/metadata";
import { helpPages } from "../help/pages";
import { atBase } from "./address";
import { bundleBench } from "./benchBundle";
import { demoJob } from "./demoJob";
import { numberSources } from "./numberSources";
import { licenceText, packageFolder } from "./licences";
import { offlineSet, withSet } from "./offlineSet";
import { sizeReport } from "./sizes";
import { unifiedPackage } from "./unifiedPackage";

/** Adds to the bundles what makes them a site: the bench, manifests, help, package, licences and the size report. */
export class SitePlugin {
  constructor(
    private readonly top: string,
    private readonly base: string,
  ) {}

  apply(compiler: Compiler): void {
    const { Compilation: Stage, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap("SitePlugin", (compilation) => {
      const packages = new Set<string>();
      compilation.hooks.finishModules.tap("SitePlugin", (modules) => {
        for (const folder of packagesOf(modules)) packages.add(folder);
      });
      const emit = (name: string, content: string | Uint8Array): void => {
        const source = new sources.RawSource(typeof content === "string" ? content : Buffer.from(content));
        if (compilation.getAsset(name)) compilation.updateAsset(name, source);
        else compilation.emitAsset(name, source);
      };
      const additions = { name: "SitePlugin", stage: Stage.PROCESS_ASSETS_STAGE_ADDITIONS };
      compilation.hooks.processAssets.tapPromise(additions, async () => {
        const bench = await bundleBench(this.top, compiler.options.mode === "production");
        for (const folder of bench.packages) packages.add(folder);
        for (const [name, content] of bench.files) emit(name, content);
        for (const [name, text] of await this.files()) emit(name, text);
      });
      compilation.hooks.processAssets.tap({ name: "SitePlugin", stage: Stage.PROCESS_ASSETS_STAGE_REPORT }, () => {
        emit("licences.txt", licenceText(packages, this.read("LICENSE").toString()));
        const worker = compilation.getAsset("sw.js")?.source.source().toString();
        const built = compilation.getAssets().map(({ name, source }) => [name, toBytes(source.source())] as const);
        if (worker !== undefined) emit("sw.js", withSet(worker, offlineSet(new Map(built))));
        const all = compilation.getAssets().filter(({ name }) => !name.endsWith(".map") && name !== "sizes.txt");
        emit("sizes.txt", sizeReport(new Map(all.map(({ name, source }) => [name, toBytes(source.source())]))));
      });
    });
  }

  private async files(): Promise<Map<string, string | Uint8Array>> {
    const { version } = JSON.parse(this.read("package.json").toString()) as { version: string };
    const unified = atBase(this.read("manifest/manifest.json").toString(), this.base);
    const icons = {
      "color.png": this.read("manifest/icons/color.png"),
      "outline.png": this.read("manifest/icons/outline.png"),
    };
    await loadLater();
    return new Map<string, string | Uint8Array>([
      ...helpPages(catalogue, version, await demoJob(this.top), numberSources()),
      ["manifest.xml", atBase(this.read("manifest/manifest.xml").toString(), this.base)],
      ["manifest.json", unified],
      ["functions.json", atBase(`${JSON.stringify(functionsJson(catalogue), null, 1)}\n`, this.base)],
      ["rillwright-unified.zip", unifiedPackage(unified, icons)],
    ]);
  }

  private read(file: string): Buffer {
    return readFileSync(path.join(this.top, file));
  }
}

function packagesOf(modules: Iterable<Module>): Set<string> {
  const folders = new Set<string>();
  for (const module of modules) {
    const file = module.nameForCondition();
    const folder = file ? packageFolder(file) : undefined;
    if (folder) folders.add(folder);
  }
  return folders;
}

function toBytes(content: string | Buffer): Uint8Array {
  return typeof content === "string" ? Buffer.from(content) : content;
}
