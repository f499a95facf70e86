import { caseBook } from "../cases";
import all from "./cases.json";

export { expectCase, expectNear, expectUnlike, given, type Case } from "../cases";

/** What a formula gives for the stated numbers, worked out outside the project: it proves arithmetic, no formula. */
const book = caseBook(all, "arithmetic");

/** The cases of a topic ("15 business arithmetic") whose id begins with a prefix. */
export const arithmeticCases = book.some;
export const arithmeticCase = book.one;
