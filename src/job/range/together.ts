import type { FactKey } from "../facts";

/** Facts that turn out high or low together, and how much of them is common. Common practice, no source. */
const TOGETHER: readonly { readonly name: string; readonly share: number; readonly facts: readonly FactKey[] }[] = [
  { name: "ground and weather", share: 0.5, facts: ["soil", "difficulty", "tasks"] },
  { name: "how the crew stacks stone", share: 0.5, facts: ["dropReach", "bankReach", "bankHeight", "bedGravelDepth"] },
  { name: "how much the client wants", share: 0.3, facts: ["sheetWanted", "lips", "bedWidth", "pools"] },
];

/** What a fact has in common with others: the name of what they share, and how much of it. */
export function commonOf(key: FactKey): { readonly name: string; readonly share: number } | undefined {
  return TOGETHER.find(({ facts }) => facts.includes(key));
}
