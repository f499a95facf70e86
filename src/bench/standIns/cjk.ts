/**
 * East Asian letters and punctuation, for the grid's line breaks. Stands in for a package that puts the same together from
 * tables of 460 kB when the page starts; browsers know the properties themselves.
 */
const LETTERS = String.raw`\p{Script=Han}\p{Script=Katakana}\p{Script=Hiragana}\p{Script=Hangul}\p{Script=Bopomofo}`;
/** The blocks of punctuation by their ranges in the Unicode standard. */
const MARKS = String.raw`\u2FF0-\u303F\u30A0-\u30FF\u3190-\u319F\u31C0-\u31EF\u3200-\u33FF\uFE10-\uFE1F\uFE30-\uFE6F\uFF00-\uFFEF`;

interface Letters {
  toRegExp(): RegExp;
}

const of = (letters: string): Letters => ({ toRegExp: () => new RegExp(`[${letters}]`, "u") });

export const letters = (): Letters => of(LETTERS);
export const punctuations = (): Letters => ({ toRegExp: () => new RegExp(`(?![${LETTERS}])[${MARKS}]`, "u") });
export const all = (): Letters => of(LETTERS + MARKS);
