/** What the quote says in place of the range while there is none. */
export const NO_PRICE = "No price yet";
