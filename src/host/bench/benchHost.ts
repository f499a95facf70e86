import { areaName, parseArea } from "../../xlsx/address";
import { fits, resolvePlace } from "../places";
import { HostRefusal, type Host, type Place } from "../port";
import type { BenchGrid } from "./benchGrid";

const SETTING = "rillwright.";

/** The port's bench side, on top of the embedded spreadsheet. */
export function createBenchHost(grid: BenchGrid): Host {
  const areasOf = (places: readonly Place[]) => {
    const names = grid.names();
    return places.map((place) => {
      const area = resolvePlace(place, names);
      return area && grid.hasSheet(area.sheet) ? area : undefined;
    });
  };
  const requireArea = (place: Place, otherwise: string) => {
    const [area] = areasOf([place]);
    if (!area) throw new HostRefusal(`"${place}" is not in this workbook${otherwise}.`);
    return area;
  };

  return {
    kind: "bench",
    templateWays: ["open", "download"],
    undoesInOneStep: true,
    names: () => Promise.resolve(grid.names()),
    read: (places) => Promise.resolve(areasOf(places).map((area) => area && grid.values(area))),
    show: (places) => Promise.resolve(areasOf(places).map((area) => area && grid.shown(area))),
    formulas: (places) => Promise.resolve(areasOf(places).map((area) => area && grid.formulas(area))),
    canWrite: (places) => Promise.resolve(areasOf(places).map((area) => area !== undefined && !grid.locked(area))),
    async write(changes) {
      const targets = changes.map(({ place, values }) => {
        const area = requireArea(place, ", so nothing was written");
        if (!fits(values, area))
          throw new HostRefusal(`The values for ${place} do not fit ${areaName(area)}; nothing was written.`);
        return { area, values };
      });
      const refused = targets.find(({ area }) => grid.locked(area));
      if (refused)
        throw new HostRefusal(`${areaName(refused.area)} holds results and is protected, so nothing was written.`);
      await grid.write(targets);
    },
    async select(place) {
      grid.select(requireArea(place, ""));
    },
    selected: () => Promise.resolve(grid.selected()),
    async insertFormula(formula) {
      const { address } = grid.selected();
      const area = parseArea(address);
      if (!area) throw new HostRefusal("Select a cell first.");
      const cell = { ...area, bottom: area.top, right: area.left };
      if (grid.locked(cell)) {
        throw new HostRefusal(
          `${areaName(cell)} is protected; select an unlocked cell, or open a workbook of your own.`,
        );
      }
      await grid.write([{ area: cell, values: [[formula]] }]);
      return areaName(cell);
    },
    async takeTemplate(template) {
      await grid.open(template);
      return { said: `${template.file} is open here.`, repaired: [], broken: [] };
    },
    async placePicture(png, title) {
      const sheet = await grid.placePicture(png, title);
      return `${title} is on the sheet ${sheet}, at the selected cell.`;
    },
    // The bench binds every formula when it opens a file, so there is nothing to enter again.
    repairFormulas: () => Promise.resolve({ found: 0, repaired: 0, left: [], stopped: false }),
    recalculate: () => grid.recalculate(),
    file: () => grid.file(),
    calculatesByItself: () => Promise.resolve(true),
    setting: (key) => Promise.resolve(grid.setting(SETTING + key)),
    keepSetting: (key, value) => Promise.resolve(grid.keepSetting(SETTING + key, value)),
    theme: () => ({ dark: grid.dark() }),
    onChange: (listener) => grid.onChange(listener),
    onSelect: (listener) => grid.onSelect(listener),
  };
}
