/** Where the outer tenth of the normal curve begins: any table of the normal distribution, 1.28155. */
export const TENTH = 1.28155;
