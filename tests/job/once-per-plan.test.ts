import { expect, test } from 'vitest';
import { oncePerPlan } from '../../src/job/once-per-plan.ts';
import type { WorkedJob } from '../../src/job/planned.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { data, exampleEntries, rules, workEntries } from './entries.ts';

function examplePlan(): WorkedJob {
  const plan = workEntries(exampleEntries);
  if (!plan.ok)
    throw new Error(`found ${JSON.stringify(plan.problems)}, expected the plan of the example job`);
  return plan.value;
}

/** Says how many times it was asked so far. */
const counting = () => {
  let times = 0;
  return oncePerPlan((_plan: WorkedJob) => ++times);
};

test('the same plan and rulebook are worked once, however often they are asked for', () => {
  const plan = examplePlan();
  const ask = counting();
  expect([ask(plan, rules), ask(plan, rules), ask(plan, rules)]).toEqual([1, 1, 1]);
});

test('another plan is worked anew, though it says the same, and so is the same one by another rulebook', () => {
  const plan = examplePlan();
  const ask = counting();
  expect([ask(plan, rules), ask({ ...plan }, rules), ask(plan, openRulebook(data))]).toEqual([1, 2, 3]);
});

test('work that finds nothing is not done again', () => {
  const plan = examplePlan();
  let times = 0;
  const ask = oncePerPlan(() => {
    times++;
    return undefined;
  });
  expect([ask(plan, rules), ask(plan, rules), times]).toEqual([undefined, undefined, 1]);
});
