import type { Declaration } from "../functions/contract/declaration";
import { firstJobPage } from "./firstJob";
import { functionPage } from "./functionPage";
import { guidePage, type DemoJob } from "./guide";
import { indexPage } from "./indexPage";
import { landingPage } from "./landing";
import { documentOf } from "./layout";
import { limitsPage } from "./limitsPage";
import { numbersPage, type NumberSource } from "./numbersPage";
import { privacyPage, supportPage, termsPage } from "./smallPrint";

/** Every static page of the site, as path and document. */
export function helpPages(
  catalogue: readonly Declaration[],
  version: string,
  job: DemoJob,
  numbers: readonly NumberSource[],
): Map<string, string> {
  const pages = [
    landingPage(),
    indexPage(catalogue),
    ...catalogue.map(functionPage),
    firstJobPage(job),
    guidePage(job),
    limitsPage(catalogue),
    numbersPage(catalogue, numbers),
    supportPage(version),
    privacyPage(),
    termsPage(),
  ];
  return new Map(pages.map((page) => [page.path, documentOf(page)]));
}
