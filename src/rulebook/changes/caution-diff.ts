import type { LoadedCaution, RulebookData } from '../rulebook.ts';
import { same } from './judge.ts';

/** What kind of change a caution underwent, the gravest that applies. */
export const cautionChangeKinds = ['looser', 'stricter', 'wording', 'source', 'new'] as const;
export type CautionChangeKind = (typeof cautionChangeKinds)[number];

/** What each word means of a caution, to a reader. */
export const cautionChangeMeaning: Readonly<Record<CautionChangeKind, string>> = {
  looser: 'A caution that is gone, or whose level is lower: a stop that became a warning, say.',
  stricter: 'A caution whose level is higher.',
  wording: 'What it says, or what to do. Its level stays.',
  source: 'Where it comes from, how that was read, or which values it rests on.',
  new: 'A caution that was not there.',
};

/** One caution that differs between two rulebooks. */
export interface CautionChange {
  readonly id: string;
  readonly kind: CautionChangeKind;
  readonly before: LoadedCaution | undefined;
  readonly after: LoadedCaution | undefined;
}

/**
 * Which cautions differ between two rulebooks? One change a caution, in the order of ids. A caution has no alias: under another name it is gone, and new.
 * @example diffCautions(data, data) // => []
 */
export const diffCautions = (
  { cautions: before }: Pick<RulebookData, 'cautions'>,
  { cautions: after }: Pick<RulebookData, 'cautions'>,
): CautionChange[] =>
  [...new Set([...Object.keys(before), ...Object.keys(after)])].sort().flatMap((id): CautionChange[] => {
    const kind = changeOf(before[id], after[id]);
    return kind ? [{ id, kind, before: before[id], after: after[id] }] : [];
  });

function changeOf(
  before: LoadedCaution | undefined,
  after: LoadedCaution | undefined,
): CautionChangeKind | undefined {
  if (!before || !after) return before ? 'looser' : after ? 'new' : undefined;
  const levels = levelChange(before, after);
  if (levels) return levels;
  if (!same(wordsOf(before), wordsOf(after))) return 'wording';
  const origin = ({ source, rules, beside = [] }: LoadedCaution) => [source, rules, beside];
  return same(origin(before), origin(after)) ? undefined : 'source';
}

/** The words of all who speak, whatever they rest on. */
const wordsOf = ({ says, do: act, beside = [] }: LoadedCaution) => [
  says,
  act,
  ...beside.map((each) => [each.agency, each.says, each.do]),
];

const gravity = { note: 1, warn: 2, stop: 3 } as const;

/** The gravest level at which each speaks: the rulebook, whose name is empty, and every agency beside it. */
function levelsOf({ level, beside = [] }: LoadedCaution): ReadonlyMap<string, number> {
  const levels = new Map<string, number>([['', gravity[level]]]);
  for (const { agency, level: own } of beside)
    levels.set(agency, Math.max(levels.get(agency) ?? 0, gravity[own]));
  return levels;
}

/** Whoever speaks less gravely than before, or no more, lets the whole be looser. */
function levelChange(before: LoadedCaution, after: LoadedCaution): 'looser' | 'stricter' | undefined {
  const [old, now] = [levelsOf(before), levelsOf(after)];
  const steps = [...new Set([...old.keys(), ...now.keys()])].map(
    (name) => (now.get(name) ?? 0) - (old.get(name) ?? 0),
  );
  if (steps.some((step) => step < 0)) return 'looser';
  return steps.some((step) => step > 0) ? 'stricter' : undefined;
}
