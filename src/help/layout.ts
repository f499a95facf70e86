import { html, type Html } from "./html";

/** A page of the site, by its path below the base address. */
export interface Page {
  readonly path: string;
  readonly title: string;
  /** One sentence for search results. */
  readonly about: string;
  readonly body: Html;
}

/** Scripts and styles of the site itself, nothing inline, nothing from elsewhere. */
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'none'";

const LINKS = [
  ["help/index.html", "Functions"],
  ["help/first-job.html", "Your first job"],
  ["help/guide.html", "A job, start to end"],
  ["help/numbers.html", "Where numbers come from"],
  ["help/limits.html", "Differences and limits"],
  ["help/support.html", "Support"],
] as const;

const SMALL_LINKS = [
  ["help/privacy.html", "Privacy"],
  ["help/terms.html", "Terms"],
  ["licences.txt", "Licenses"],
] as const;

/** The whole document of a page. */
export function documentOf(page: Page): string {
  const up = "../".repeat(page.path.split("/").length - 1);
  const link = ([to, label]: readonly [string, string]): Html =>
    html`<li><a href="${up}${to}" ${to === page.path ? html` aria-current="page"` : ""}>${label}</a></li>`;
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta http-equiv="Content-Security-Policy" content="${POLICY}" />
        <title>${page.title === "Rillwright" ? "" : `${page.title} · `}Rillwright</title>
        <meta name="description" content="${page.about}" />
        <link rel="icon" href="${up}icons/icon-32.png" />
        <link rel="stylesheet" href="${up}help.css" />
        <script src="${up}help.js" defer></script>
      </head>
      <body>
        <a class="skip" href="#content">Skip to the content</a>
        <header>
          <a class="home" href="${up}index.html"
            ><img src="${up}icons/icon-40.png" alt="" width="28" height="28" />Rillwright</a
          >
          <nav aria-label="Help">
            <ul>
              ${LINKS.map(link)}
            </ul>
          </nav>
        </header>
        <main id="content" tabindex="-1">
          <h1>${page.title}</h1>
          ${page.body}
        </main>
        <footer>
          <nav aria-label="Small print">
            <ul>
              ${SMALL_LINKS.map(link)}
            </ul>
          </nav>
        </footer>
      </body>
    </html> `.text;
}
