import { evaluate, type State } from "../evaluate";
import type { FactKey, Job } from "../facts";
import { lazily } from "../derived";
import { accessRule } from "./access";
import { withAnswers } from "../facts/standing";
import { readAnswers, type Answers } from "./answers";
import { boxesRule } from "./boxes";
import { bedRule } from "./bed";
import { groundRule } from "./ground";
import { linerRule } from "./liner";
import { lipsRule } from "./lips";
import type { Offers } from "./offers";
import { pricesRule } from "./prices";
import { siteRule } from "./site";
import { Sketch, type Drafted, type Places } from "./sketch";
import { stepsRule } from "./steps";
import { stoneRule } from "./stone";
import { shortfallsOf, type Shortfall } from "./shortfalls";
import { worksRule } from "./works";

/** What a draft is made from. */
export interface DraftWish {
  /** What is typed for this job. */
  readonly typed: Job;
  readonly offers: Offers;
  /** What the company's book says, and what stands for a blank where no rule says better. */
  readonly usual: Partial<Job>;
  /** Where on the normal curve facts in doubt are taken; as likely where left out. */
  readonly places?: Places;
}

export interface Draft {
  /** The job with everything in it that the rules can say. */
  readonly job: Job;
  /** What the rules said, by fact: none of it is typed. */
  readonly facts: ReadonlyMap<FactKey, Drafted>;
  /** Facts of the draft that may turn out other than likely. */
  readonly doubtful: readonly FactKey[];
  /** Sentences on answers that could not be used. */
  readonly unclear: readonly string[];
  readonly state: State;
  /** Checks that fail, and what would help. */
  readonly shortfalls: readonly Shortfall[];
}

const read = new WeakMap<Job, Answers>();

/** What is typed, read once for all drafts that a range makes of it. */
function answersOf(typed: Job): Answers {
  const known = read.get(typed) ?? readAnswers(withAnswers(typed));
  read.set(typed, known);
  return known;
}

/** A whole design from whatever is known: what is typed always wins, everything else is assumed by a rule with a reason. */
export function draftOf({ typed, offers, usual, places }: DraftWish): Draft {
  const { job: usable, unclear } = answersOf(typed);
  const sketch = new Sketch(usable, usual, offers, places);
  siteRule(sketch);
  stepsRule(sketch);
  lipsRule(sketch);
  boxesRule(sketch);
  const flowing = bedRule(sketch);
  const { lift } = accessRule(sketch);
  groundRule(sketch, flowing);
  stoneRule(sketch, lift, flowing);
  worksRule(sketch, flowing);
  linerRule(sketch, flowing);
  pricesRule(sketch);
  const job: Job = sketch.job;
  const facts = lazily(() => sketch.facts());
  const state = lazily(() => evaluate(job));
  const shortfalls = lazily(() => shortfallsOf(job, state()));
  return {
    job,
    unclear,
    get facts() {
      return facts();
    },
    get doubtful() {
      return sketch.doubtful();
    },
    get state() {
      return state();
    },
    get shortfalls() {
      return shortfalls();
    },
  };
}
