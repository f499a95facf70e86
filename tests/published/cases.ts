import { caseBook } from "../cases";
import all from "./cases.json";

export { expectCase as expectPublished, expectNear, expectUnlike, given, type Case as PublishedCase } from "../cases";

/** What books, standards and programs of others print; none of it is worked out for this project. */
const book = caseBook(all, "published");

/** The cases of a topic ("4 EPANET operating points") whose id begins with a prefix. */
export const publishedCases = book.some;
export const publishedCase = book.one;
