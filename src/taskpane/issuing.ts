import { dayOf } from "../host/dates";
import { HostRefusal, type Host } from "../host/port";
import { issueRows, nextIssue, rowsUsed } from "../job/story/issue";
import { quoteState, STATE_PLACES } from "../workbook/issued";
import { areaName, parseArea } from "../xlsx/address";

/** Issues the quote: what the client holds is kept at the end of the list on Issued. Gives the sentence that says so. */
export async function issueQuote(host: Host, now = new Date()): Promise<string> {
  const [draft, list, ...cells] = await host.read(["QuoteDraft", "IssuedList", ...STATE_PLACES]);
  const address = (await host.names()).find(({ name }) => name === "IssuedList")?.address;
  const place = address === undefined ? undefined : parseArea(address);
  if (!list || !place) throw new HostRefusal("This workbook has no sheet Issued; begin the job from a new one.");
  const next = nextIssue(list, quoteState(cells), {
    day: dayOf(now),
    draft: String(draft?.[0]?.[0] ?? "there is no sheet Quote"),
    room: place.bottom - place.top + 1,
  });
  if (typeof next === "string") throw new HostRefusal(next);
  const values = issueRows(next);
  const top = place.top + rowsUsed(list);
  await host.write([{ place: areaName({ ...place, top, bottom: top + values.length - 1 }), values }]);
  return `Revision ${next.revision} is issued: what the client holds is kept on Issued. Save the job, and print the quote.`;
}
