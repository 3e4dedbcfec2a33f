import { printed, type Remark, said } from '../calc/declare/remark.ts';
import { plus, type Quantity, quantity } from '../quantity/quantity.ts';
import { type FillLog, type LoggedOpening, toBlow } from './fill-log.ts';

/** What of the cavity is filled, or is to be, through the openings of the way that is taken. */
export interface Filled {
  /** What goes in there by the plan, and what the log has. */
  readonly planned: Quantity<'pieces'>;
  readonly bags: Quantity<'pieces'>;
  readonly volume: Quantity<'volume'>;
  /** Why it is not all of the cavity, in sentences; empty where it is. */
  readonly leavesOut: readonly Remark[];
}

/** Fill that comes by way of another opening lies there all the same. */
const isFilled = ({ notFilled }: LoggedOpening): boolean =>
  !notFilled || notFilled === 'filled from another opening';

/**
 * What of the cavity does this log fill? Undefined while its openings are not known.
 * @example filled({ openings: [], unknown: 'The lanes wait.', beyondReach: undefined }) // => undefined
 */
export function filled({
  openings,
  unknown,
  beyondReach,
}: Pick<FillLog, 'openings' | 'unknown' | 'beyondReach'>): Filled | undefined {
  if (unknown !== undefined) return undefined;
  const taken = openings.filter(isFilled);
  const none = openings.length - taken.length;
  const bags = (all: readonly Quantity<'pieces'>[]) => all.reduce(plus, quantity(0, 'bag'));
  return {
    planned: bags(taken.map((each) => each.planned)),
    bags: bags(taken.map((each) => each.bags)),
    volume: taken.map(({ opening }) => toBlow(opening)).reduce(plus, quantity(0, 'ft3')),
    leavesOut: [
      ...(none > 0
        ? [`${none} of the ${openings.length} openings ${none === 1 ? 'is' : 'are'} not filled.`]
        : []),
      ...(beyondReach
        ? [
            said`${printed(beyondReach, { figures: 3 })} of the plan are for what none of the openings reaches.`,
          ]
        : []),
    ],
  };
}
