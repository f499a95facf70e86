import { inWords } from "../functions/contract/argument";
import type { Declaration, Topic } from "../functions/contract/declaration";
import { functionPath } from "./functionPage";
import { html } from "./html";
import type { Page } from "./layout";

const TOPICS: Readonly<Record<Topic, string>> = {
  quantity: "Quantities",
  water: "Lips, beds and evaporation",
  basin: "Basin and drain-back",
  pipe: "Pipe and head",
  pump: "Pump and running cost",
  liner: "Liner and fabric",
  stone: "Gravel and boulders",
  earth: "Digging and berm",
  ground: "Shots and cross sections",
  levels: "Drops and rod readings",
  money: "Price, orders and invoices",
  job: "A whole job from a few answers",
};

/** The list of every function, which the page's script searches. */
export function indexPage(catalogue: readonly Declaration[]): Page {
  const topics = (Object.keys(TOPICS) as Topic[]).filter((topic) => catalogue.some((d) => d.topic === topic));
  return {
    path: "help/index.html",
    title: "Functions",
    about: `The ${catalogue.length} worksheet functions of Rillwright, with formula, source, limits and a worked example each.`,
    body: html`
      <p>
        Type <code>=RILL.</code> in a cell and choose. Each page gives the formula, the unit and range of every
        argument, the source, the limits and a worked example.
      </p>
      <search class="search" hidden>
        <label for="search">Find a function</label>
        <input id="search" type="search" autocomplete="off" spellcheck="false" />
        <p id="found" role="status"></p>
      </search>
      ${topics.map(
        (topic) =>
          html` <section class="topic" aria-labelledby="${topic}">
            <h2 id="${topic}">${TOPICS[topic]}</h2>
            <ul>
              ${catalogue.filter((d) => d.topic === topic).map(entry)}
            </ul>
          </section>`,
      )}
    `,
  };
}

function entry({ name, summary, args, topic }: Declaration): ReturnType<typeof html> {
  const words = [TOPICS[topic], ...Object.keys(args).map(inWords), ...Object.values(args).map((a) => a.about)];
  return html` <li data-words="${words.join(" ")}">
    <a href="${functionPath(name).replace("help/", "")}">${name}</a> ${summary}
  </li>`;
}
