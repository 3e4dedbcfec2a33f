import { describe, expect, test } from 'vitest';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { layout } from '../../../src/calc/holes/declaration.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { complaints, type Entries, printed } from '../told.ts';

const { data } = theProject();

/** What is said of a short roof. */
const said = (more: Entries) => printed(layout, { length: '14 ft', ...more });

const vent = { what: 'plumbing vent', along: '84 in', side: 'back', from_peak: '16 in', across: '6 in' };

test('the usual move is held in whatever unit its rule has: a hole moved by 10 in is not far of 1 ft', () => {
  const id = 'access.roof-holes.usual-move';
  const rule = data.rules[id];
  if (!rule) throw new Error(`found no rule ${id}, expected one`);
  const inFeet = openRulebook({
    ...data,
    rules: { ...data.rules, [id]: { ...rule, value: { kind: 'at-most', number: 1, unit: 'ft' } } },
  });
  // The vent closes 7 + 3 in on either side of the middle, at 84 in, so the hole goes to 74.
  const found = answer(layout, { length: '14 ft', obstacles: [vent] }, inFeet);
  expect(found.ok && found.value.cautions).not.toContain('caution.layout.moved-far');
  const inInches = answer(layout, { length: '14 ft', obstacles: [vent] }, openRulebook(data));
  expect(inInches.ok && inInches.value.cautions).toContain('caution.layout.moved-far');
});

/*
 * By hand, with the rulebook's hole of 6 in, 16 in below the peak, a membrane of 14 in a side, and first and last hole 6 to 8 ft from the
 * ends. One hole serves 14 ft best from the middle, at 84 in. A truss is passed by more than half a hole and half a member of 1.5 in, so
 * by the next eighth; what comes through the roof by half a membrane and half its own width, which may touch: 7 + 3 in. Of two places as
 * near to the middle the one nearer the starting end is taken.
 */
describe('the one hole of a roof of 14 ft', () => {
  test.each([
    { title: 'lies in the middle', more: {}, at: '7 ft' },
    { title: 'passes a truss there', more: { trusses_measured: [{ at: '84 in' }] }, at: '6 ft 8 1/8 in' },
    {
      title: 'goes by the trusses that were measured, in any order, not by a spacing beside them',
      more: { truss_spacing: '2 in', trusses_measured: [{ at: '84 in' }, { at: '10 in' }] },
      at: '6 ft 8 1/8 in',
    },
    { title: 'passes a vent by half of both', more: { obstacles: [vent] }, at: '6 ft 2 in' },
    {
      title: 'passes a flue by its clearance of 2 in as well',
      more: { obstacles: [{ ...vent, what: 'furnace flue' }] },
      at: '6 ft',
    },
    {
      title: 'passes a flue by what its listing says',
      more: { obstacles: [{ ...vent, what: 'furnace flue', listed: '1 in' }] },
      at: '6 ft 1 in',
    },
    {
      title: 'minds no vent on the other side',
      more: { obstacles: [{ ...vent, side: 'front' }] },
      at: '7 ft',
    },
    {
      // A skylight of 30 in on the ridge reaches 15 in down either side; the row lies 16 in down: 15 + 7 = 22 in along the roof, at 84 in.
      title: 'passes a skylight that reaches over the peak, whichever side it is told on',
      more: { obstacles: [{ ...vent, what: 'skylight', side: 'front', from_peak: '0 in', across: '30 in' }] },
      at: '5 ft 2 in',
    },
    {
      // 4 in over the peak and 16 in down are 20 in, and half of 26 in with half of the membrane are 20 in: they may touch.
      title: 'minds nothing that only touches from over the peak',
      more: { obstacles: [{ ...vent, side: 'front', from_peak: '4 in', across: '26 in' }] },
      at: '7 ft',
    },
    {
      title: 'minds no vent far enough down: 10 in, half of both',
      more: { obstacles: [{ ...vent, from_peak: '26 in' }] },
      at: '7 ft',
    },
    {
      title: 'minds one a little less far down',
      more: { obstacles: [{ ...vent, from_peak: '25.9 in' }] },
      at: '6 ft 2 in',
    },
  ])('$title', ({ more, at }) => expect(said(more).figures.hole_1).toBe(at));
});

describe('what stands beside the layout', () => {
  test('framing is never cut: said whatever comes out', () => {
    for (const more of [{}, { truss_spacing: '2 in' }])
      expect(said(more).cautions).toContain('caution.layout.framing');
  });

  const flue = { ...vent, what: 'furnace flue' };
  test.each([
    { title: 'a vent', obstacles: [vent], calls: [] },
    {
      title: 'a flue of which nobody read what it is, after one that is known',
      obstacles: [{ ...flue, kind: 'masonry chimney' }, flue],
      calls: ['caution.flue.kind-unknown'],
    },
    { title: 'a flue whose listing was read', obstacles: [{ ...flue, listed: '1 in' }], calls: [] },
    {
      title: 'a single-wall connector',
      obstacles: [{ ...flue, kind: 'connector, oil' }],
      calls: ['caution.flue.connector'],
    },
  ])('$title calls for what must be known before a hole is cut', ({ obstacles, calls }) =>
    expect(said({ obstacles }).cautions.filter((id) => id.startsWith('caution.flue.'))).toEqual(calls),
  );

  const unknown = (more: Entries) => said(more).cautions.filter((id) => id.endsWith('-unknown'));
  test.each<[title: string, more: Entries, calls: readonly string[]]>([
    ['no truss is entered', {}, ['caution.layout.trusses-unknown']],
    ['their spacing alone', { truss_spacing: '24 in' }, ['caution.layout.trusses-unknown']],
    ['their spacing and the first', { truss_spacing: '24 in', first_truss: '0 in' }, []],
    [
      'the spacing of the seams alone',
      { truss_spacing: '24 in', first_truss: '0 in', seam_spacing: '4 ft' },
      ['caution.layout.seams-unknown'],
    ],
    [
      'their spacing and the first',
      { truss_spacing: '24 in', first_truss: '0 in', seam_spacing: '4 ft', first_seam: '2 ft' },
      [],
    ],
    [
      'seams that were measured, whatever the spacing',
      { truss_spacing: '24 in', first_truss: '0 in', seam_spacing: '4 ft', seams_measured: [{ at: '2 ft' }] },
      [],
    ],
  ])('where members lie is told as not known: %s', (_, more, calls) => expect(unknown(more)).toEqual(calls));

  test('seams every 9 in leave no patch of 10 in off them; without seams there is nothing to say', () => {
    expect(said({ seam_spacing: '9 in' }).cautions).toContain('caution.layout.over-seam');
    expect(said({}).cautions).not.toContain('caution.layout.over-seam');
  });

  test('members of 1.5 in every 2 in leave no room for a hole: no layout, and why', () => {
    const { figures, cautions, remarks } = said({ truss_spacing: '2 in' });
    expect(figures).toEqual({ outcome: 'no room' });
    expect(cautions).toContain('caution.layout.departs');
    expect(remarks).toHaveLength(1);
  });

  test('a roof of 4 ft holds no hole 6 ft from both ends: the least departure, told with what it departs from', () => {
    const { figures, cautions, remarks } = said({ length: '4 ft' });
    expect(figures.outcome).toBe('least departure');
    expect(cautions).toContain('caution.layout.departs');
    expect(remarks.length).toBeGreaterThan(1);
    expect(said({}).figures.outcome).toBe('meets every rule');
    expect(said({}).cautions).not.toContain('caution.layout.departs');
  });
});

describe('entries that no roof has are refused where they stand', () => {
  test.each([
    {
      title: 'trusses closer than any',
      more: { truss_spacing: '1.9 in' },
      says: 'Truss spacing (truss_spacing): found 1.9 in; expected 2 in or more.',
    },
    {
      title: 'seams closer than any',
      more: { seam_spacing: '1 in' },
      says: 'Seam spacing (seam_spacing): found 1 in; expected 2 in or more.',
    },
    {
      title: 'a vent beyond the end',
      more: { obstacles: [vent, { ...vent, along: '15 ft' }] },
      says: 'Vents, flues and skylights (obstacles): found a plumbing vent at 15 ft; expected a place on the roof, which is 14 ft long.',
    },
    {
      title: 'a roof shorter than a hole',
      more: { length: '5 in' },
      says: 'Length of the roof (length): found 5 in; expected more than a hole of 6 in.',
    },
  ])('$title', ({ more, says }) => {
    expect(complaints(layout, { length: '14 ft', ...more })).toEqual([says]);
  });

  test.each([
    { title: 'a vent at the very end', more: { obstacles: [{ ...vent, along: '14 ft' }] } },
    { title: 'a roof as long as a hole, told in millimetres', more: { length: '152.4 mm' } },
  ])('$title is taken', ({ more }) => expect(complaints(layout, { length: '14 ft', ...more })).toEqual([]));
});
