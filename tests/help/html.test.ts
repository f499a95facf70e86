import { describe, expect, it } from "vitest";
import { html } from "../../src/help/html";

describe("markup", () => {
  it("escapes what is put into it", () => {
    const inside = "<b> & 2' 6\"";
    expect(html`<p>${inside}</p>`.text).toBe("<p>&lt;b&gt; &amp; 2' 6&quot;</p>");
    expect(html`<a title="${'"'}">`.text).toBe('<a title="&quot;">');
  });

  it("keeps markup put into it, joins lists, and leaves out what is false", () => {
    const items = ["a", "<"].map((x) => html`<li>${x}</li>`);
    expect(html`<ul>${items}${false}${undefined}</ul>`.text).toBe("<ul><li>a</li><li>&lt;</li></ul>");
  });
});
