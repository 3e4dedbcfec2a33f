import { describe, expect, test } from 'vitest';
import { EntriesClash } from '../../../src/calc/declare/calculation.ts';
import { checkOpening, type Opening } from '../../../src/calc/marks/opening.ts';
import { quantity } from '../../../src/quantity/quantity.ts';

const feet = (amount: number) => quantity(amount, 'ft');

/** In the middle of a stretch and of a cavity, each 8 ft, with a stream of 3 ft. */
const sound: Opening = {
  along: feet(4),
  from: feet(0),
  to: feet(8),
  width: feet(8),
  across: feet(4),
  streamReach: feet(3),
};

/** The field that is refused; none where nothing is. */
function refused(more: Partial<Opening>): string | undefined {
  try {
    checkOpening({ ...sound, ...more });
    return undefined;
  } catch (error) {
    if (error instanceof EntriesClash) return error.problem.field;
    throw error;
  }
}

describe('an entry is refused where it can’t be true, and not a part of its unit sooner or later', () => {
  test.each<[title: string, more: Partial<Opening>, field: string | undefined]>([
    ['a stretch of half a foot', { from: feet(4), to: feet(4.5) }, undefined],
    ['a stretch of nothing', { from: feet(4), to: feet(4) }, 'to'],
    ['a stretch that ends half a foot before it begins', { from: feet(4.5), to: feet(4) }, 'to'],
    ['an opening at the beginning of its stretch', { along: feet(0) }, undefined],
    ['one half a foot into it', { along: feet(0.5) }, undefined],
    ['one half a foot before it', { from: feet(4.5) }, 'along'],
    ['an opening at the end of its stretch', { along: feet(8) }, undefined],
    ['one half a foot past it', { along: feet(8.5) }, 'along'],
    ['a cavity half an inch wide', { width: quantity(0.5, 'in'), across: quantity(0.25, 'in') }, undefined],
    ['a cavity of no width', { width: feet(0), across: feet(0) }, 'width'],
    ['an opening at the eave', { across: feet(0) }, undefined],
    ['one half an inch up from it', { across: quantity(0.5, 'in') }, undefined],
    ['one half an inch outside it', { across: quantity(-0.5, 'in') }, 'across'],
    ['an opening at the other eave', { across: feet(8) }, undefined],
    ['one half a foot past that', { across: feet(8.5) }, 'across'],
    ['a stream of half an inch', { streamReach: quantity(0.5, 'in') }, undefined],
    ['a stream of nothing', { streamReach: feet(0) }, 'stream_reach'],
    ['a stand-off as long as the stream', { standOff: feet(3) }, undefined],
    ['one half a foot longer', { standOff: feet(3.5) }, 'stand_off'],
  ])('%s', (_, more, field) => {
    expect(refused(more)).toBe(field);
  });
});
