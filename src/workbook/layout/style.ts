import type { Style } from "../model";

/** The face every cell is set in; named outright, since themes do not travel between workbooks. */
export const FONT = "Arial";
export const FONT_SIZE = 10;
/** Height of a row of one line, in points. */
export const DEFAULT_HEIGHT = 15;

/** Few colours, far enough apart in lightness to be told apart in grey. */
export const COLOR = {
  ink: "1F2A2E",
  soft: "4F5D63",
  line: "AEB8BB",
  deep: "2B4A52",
  white: "FFFFFF",
  input: "FBF4DF",
  inputEdge: "8A6A1F",
  band: "E6ECEC",
  warn: "5A1F14",
} as const;

const ink: Style = { color: COLOR.ink, vertical: "center" };
const rule: Style = { lines: { bottom: "hair" }, lineColor: COLOR.line };

/** The styles sheets are made of. Inputs are told from results by a thick left edge and a fill, not by colour alone. */
export const STYLE = {
  plain: ink,
  title: { ...ink, bold: true, size: 16, color: COLOR.deep },
  subtitle: { ...ink, italic: true, color: COLOR.soft, wrap: true },
  section: { ...ink, bold: true, size: 11, color: COLOR.white, fill: COLOR.deep },
  label: { ...ink, ...rule, wrap: true },
  unit: { ...ink, ...rule, color: COLOR.soft, align: "left", indent: 1 },
  note: { ...ink, color: COLOR.soft, wrap: true },
  remark: { ...ink, ...rule, color: COLOR.soft, wrap: true },
  caution: {
    ...ink,
    bold: true,
    color: COLOR.warn,
    wrap: true,
    lines: { left: "medium", top: "thin", bottom: "thin", right: "thin" },
    lineColor: COLOR.warn,
  },
  notice: {
    ...ink,
    bold: true,
    wrap: true,
    lines: { left: "medium", top: "hair", bottom: "hair", right: "hair" },
    lineColor: COLOR.soft,
  },
  input: {
    ...ink,
    fill: COLOR.input,
    unlocked: true,
    lines: { left: "medium", top: "hair", bottom: "hair", right: "hair" },
    lineColor: COLOR.inputEdge,
  },
  result: { ...ink, ...rule, align: "right" },
  resultText: { ...ink, ...rule, align: "left", wrap: true },
  strong: { ...ink, bold: true, align: "right", lines: { top: "thin", bottom: "double" }, lineColor: COLOR.ink },
  head: {
    ...ink,
    bold: true,
    wrap: true,
    fill: COLOR.band,
    align: "center",
    lines: { top: "thin", bottom: "thin" },
    lineColor: COLOR.ink,
  },
  headText: {
    ...ink,
    bold: true,
    wrap: true,
    fill: COLOR.band,
    align: "left",
    lines: { top: "thin", bottom: "thin" },
    lineColor: COLOR.ink,
  },
  link: { ...ink, ...rule, color: "1A4E8A" },
} as const satisfies Record<string, Style>;

export type StyleName = keyof typeof STYLE;
