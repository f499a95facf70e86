import type { RTree } from "@univerjs/core";
import type {
  IDependencyManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyTree,
  IFormulaRuntimeService,
  IOtherFormulaManagerService,
} from "@univerjs/engine-formula";

type Current = IFormulaCurrentConfigService;

/** What we use of the inside of the engine's `FormulaDependencyGenerator`. */
export interface Inside {
  readonly _currentConfigService: Current;
  readonly _runtimeService: IFormulaRuntimeService;
  readonly _otherFormulaManagerService: IOtherFormulaManagerService;
  readonly _dependencyManagerService: IDependencyManagerService;
  readonly _dependencyTreeCache: Map<number, IFormulaDependencyTree>;
  readonly _dependencyRTreeCacheForAddressFunction: RTree;
  _updateRangeFlatten(): void;
  _generateTreeList(
    formulas: ReturnType<Current["getFormulaData"]>,
    others: ReturnType<IOtherFormulaManagerService["getOtherFormulaData"]>,
    units: ReturnType<Current["getUnitData"]>,
  ): Promise<IFormulaDependencyTree[]>;
  _getAddressFunctionNodeList(node: unknown): readonly unknown[];
  _getTreeNode(tree: IFormulaDependencyTree): unknown;
  _detectForcedRecalculationNode(tree: IFormulaDependencyTree, node: unknown): boolean;
}
