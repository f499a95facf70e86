import { catalogue } from "./catalogue";
import { callFromSheet } from "./contract/report";

/**
 * Excel runs this script and calls each function by the name associated here; functions.json tells it the arguments.
 * It fills left-out arguments with null and appends its invocation object, which no function of ours needs.
 */
for (const declaration of catalogue) {
  const count = Object.keys(declaration.args).length;
  CustomFunctions.associate(declaration.name, (...given: unknown[]) =>
    callFromSheet(declaration, given.slice(0, count)),
  );
}
