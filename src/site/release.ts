import { zipSync } from "fflate";

/** Files of the build that belong to one address alone, and cannot be given another by an editor. */
const MADE_FOR_ONE_ADDRESS = /^(manifest\.json|rillwright-unified\.zip)$/;
/** What is for those who build it. */
const FOR_BUILDERS = /\.map$|^sizes\.txt$/;

/** What a release is packed from. */
export interface Release {
  readonly version: string;
  /** The built site, by name. */
  readonly site: ReadonlyMap<string, Uint8Array>;
  readonly workbooks: ReadonlyMap<string, Uint8Array>;
  /** The install guide, as PDF. */
  readonly guide: Uint8Array;
  readonly license: string;
  /** Whether the site is made for a company's own address already. */
  readonly addressed: boolean;
}

/** One zip with all that a company needs: the site, the workbooks and the install guide. The same input gives the same bytes. */
export function releaseZip(release: Release): Uint8Array {
  const folder = `rillwright-${release.version}`;
  const site = [...release.site].filter(
    ([name]) => !FOR_BUILDERS.test(name) && (release.addressed || !MADE_FOR_ONE_ADDRESS.test(name)),
  );
  const files: [string, Uint8Array][] = [
    ["START-HERE.txt", text(startHere(release.version))],
    ["install-guide.pdf", release.guide],
    ["LICENSE.txt", text(release.license)],
    ...[...release.workbooks].map(([name, bytes]): [string, Uint8Array] => [`workbooks/${name}`, bytes]),
    ...site.map(([name, bytes]): [string, Uint8Array] => [`site/${name}`, bytes]),
  ];
  const sorted = files.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  const named = Object.fromEntries(sorted.map(([name, bytes]) => [`${folder}/${name}`, bytes]));
  return zipSync(named, { level: 9, mtime: "2000-01-01T00:00:00" });
}

function startHere(version: string): string {
  return `Rillwright ${version}

For contractors who build recirculating streams and waterfalls: from the tape
and the rod to pump, liner, stone, price, quote and orders, in Excel or in a
browser. Everything is calculated on your own computer.

install-guide.pdf   two pages for whoever runs the company's computers:
                    begin there
site                the files for a web server with https: the bench
                    (bench.html), the Excel add-in (manifest.xml), the help
workbooks           job workbooks to start from, US and metric, blank and with
                    an invented demo job

The demo's prices, pumps, clients and companies are invented.
MIT license, no warranty. Not affiliated with any maker of spreadsheets.
`;
}

/** Windows' editor wants its own line ends. */
function text(content: string): Uint8Array {
  return new TextEncoder().encode(content.replace(/\r?\n/g, "\r\n"));
}
