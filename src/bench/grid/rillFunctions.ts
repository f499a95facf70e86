import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import { catalogue } from "../../functions/catalogue";

/** The namespace every worksheet function is called under. */
const NAMESPACE = "RILL";

/** What the formula bar says of each function while its formula is typed. */
export function rillDescriptions(): IFunctionInfo[] {
  return catalogue.map((declaration) => ({
    functionName: `${NAMESPACE}.${declaration.name}`,
    functionType: FunctionType.User,
    description: declaration.summary,
    abstract: declaration.summary,
    functionParameter: Object.entries(declaration.args).map(([name, argument]) => ({
      name,
      detail: `${argument.about} (${argument.rule("US")})`,
      example: "",
      require: argument.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  }));
}
