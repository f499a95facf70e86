import { expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import { tasksOf } from "../../../src/job/draft/companyTasks";

it("puts each rate of the book where its task stands, and its own behind them", () => {
  const { labor, ...book } = shippedBook("US");
  const [first, second, ...rest] = labor.rates;
  const own = ["Lamps", "Plants", "Bridge", "Railing"].map((task) => ({
    ...{ task, unit: "each", hours: 2, machineHours: 0, invented: false },
  }));
  // The book lost its first row, turned the others around, and got four of its own; a job has room for three.
  const turned = [...own, ...rest.slice().reverse(), ...(second ? [second] : [])];
  const { rows, left } = tasksOf({ ...book, labor: { ...labor, rates: turned } });
  expect(rows[0]).toEqual({ name: first?.task, unit: "job" });
  expect(rows[1]).toMatchObject({ name: "Dig pit, trench and bed", hours: 0.35 });
  expect(rows[7]).toMatchObject({ name: "Pipe", hours: 0.11 });
  expect(rows.slice(15).map(({ name }) => name)).toEqual(["Lamps", "Plants", "Bridge"]);
  expect(left).toEqual(["Railing"]);
});
