import { describe, expect, test } from 'vitest';
import { bays } from '../../../src/calc/ways/bays-declaration.ts';
import { compareWays } from '../../../src/calc/ways/declaration.ts';
import { lanes } from '../../../src/calc/ways/lanes-declaration.ts';
import type { Quantity } from '../../../src/quantity/quantity.ts';
import { complaints, type Entries, printed, worked } from '../told.ts';

/** The ridge lies 4 ft from the back eave and 6 ft from the other; from 1 in the roof rises 1 in in 4, on the far side 9 in in 72. */
const lopsided: Entries = {
  shape: 'measured',
  width: '10 ft',
  eave: '',
  ridge: '',
  points: [
    { from_eave: '0 in', depth: '1 in' },
    { from_eave: '4 ft', depth: '13 in' },
    { from_eave: '10 ft', depth: '4 in' },
  ],
};

const home: Entries = {
  length: '14 ft',
  shape: 'two-slope',
  width: '12 ft',
  eave: '6 in',
  ridge: '18 in',
  cover: 'metal',
  carries_crew: 'yes',
  hot_in_cavity: 'no',
  gables: 'both ends',
  edges: 'one edge',
  truss_spacing: '24 in',
  first_truss: '0 in',
};
const compared = (more: Entries) => printed(compareWays, { ...home, ...more });
const rowOf = (way: string, more: Entries = {}) =>
  compared(more).tables.ways?.find((row) => row.startsWith(way));
const free = 'nothing that was entered';
const known = 'nothing that is asked here';

describe('the row of the gable end', () => {
  /** Openings, push, patches, what else to close, what rules it out, what is not known. */
  const cases: readonly [what: string, more: Entries, row: string][] = [
    ['both ends of 14 ft', {}, `2 | 7 ft | 0 | both gable ends | ${free} | ${known}`],
    [
      'both ends of 14 ft 1 in',
      { length: '14 ft 1 in' },
      `2 | 7 ft 0 1/2 in | 0 | both gable ends | ${free} | ${known}`,
    ],
    ['one end', { gables: 'one end' }, `1 | 14 ft | 0 | the gable end | ${free} | ${known}`],
    [
      'neither end',
      { gables: 'neither' },
      `0 | not known | 0 | nothing | no gable end can be opened | ${known}`,
    ],
    [
      'ends not looked at',
      { gables: 'not known' },
      `not known | not known | 0 | not known | ${free} | whether a gable end can be opened`,
    ],
    [
      'trusses that nobody knows',
      { truss_spacing: '', first_truss: '' },
      `2 | 7 ft | 0 | both gable ends | ${free} | the trusses, whose chords and webs the hose has to pass`,
    ],
    [
      'a reach between its two ends',
      { length: '60 ft' },
      `2 | 30 ft | 0 | both gable ends | ${free} | whether the hose goes the whole way: it has to be pushed 30 ft, and reaches 25 ft to 35 ft`,
    ],
    [
      'a push beyond a reach of a third of a foot more than 6',
      { reach: '6.3333 ft' },
      `2 | 7 ft | 0 | both gable ends | the hose has to be pushed 7 ft, and reaches 6.33 ft: a part is left over | ${known}`,
    ],
  ];
  test.each(cases)('%s', (_, more, row) => expect(rowOf('gable end', more)).toBe(`gable end | ${row}`));

  test.each([
    ['both ends', 'Push from each end, to the middle'],
    ['one end', 'Push from the one end, to the other'],
  ])('the push from %s is named', (gables, label) => {
    const { figures } = worked(compareWays, { ...home, gables });
    expect((figures.gable_push?.value as Quantity | undefined)?.label).toBe(label);
  });
});

describe('the row of the lifted edge', () => {
  /** Trusses every 24 in from end to end of 14 ft leave seven bays. */
  const cases: readonly [what: string, more: Entries, row: string][] = [
    ['one edge of 12 ft', {}, `7 | 12 ft | 0 | the edge of the roof | ${free} | ${known}`],
    ['both edges', { edges: 'both edges' }, `14 | 6 ft | 0 | both edges of the roof | ${free} | ${known}`],
    [
      'neither',
      { edges: 'neither' },
      `0 | not known | 0 | nothing | no edge of the roof can be lifted | ${known}`,
    ],
    [
      'not looked at',
      { edges: 'not known' },
      `not known | not known | 0 | not known | ${free} | whether an edge of the roof can be lifted`,
    ],
    [
      'half a double-section home has one edge alone',
      { shape: 'one-slope', edges: 'both edges' },
      `7 | 12 ft | 0 | the edge of the roof | ${free} | ${known}`,
    ],
    [
      'trusses that nobody knows',
      { truss_spacing: '', first_truss: '' },
      `not known | 12 ft | 0 | the edge of the roof | ${free} | where the trusses stand, and so the bays`,
    ],
    [
      'a cover that nobody told',
      { cover: '' },
      `7 | 12 ft | 0 | the edge of the roof | ${free} | what the roof is covered with`,
    ],
    [
      'shingles',
      { cover: 'shingles' },
      `7 | 12 ft | 0 | the edge of the roof | ${free} | how an edge of this cover is lifted and closed: ask a roofer`,
    ],
    [
      'a tube too short',
      { reach: '10 ft' },
      `7 | 12 ft | 0 | the edge of the roof | the tube has to be pushed 12 ft, and reaches 10 ft: a part is left over | ${known}`,
    ],
    [
      'the farther edge of a lopsided roof sets the push, its lower eave the room',
      { ...lopsided, edges: 'both edges' },
      `14 | 6 ft | 0 | both edges of the roof | the cavity where it is lowest leaves 1 in free, and the tube is 2 in wide | ${known}`,
    ],
    [
      'and so it does seen from the other side',
      {
        ...lopsided,
        points: [
          { from_eave: '0 in', depth: '4 in' },
          { from_eave: '6 ft', depth: '13 in' },
          { from_eave: '10 ft', depth: '1 in' },
        ],
        edges: 'both edges',
      },
      `14 | 6 ft | 0 | both edges of the roof | the cavity where it is lowest leaves 1 in free, and the tube is 2 in wide | ${known}`,
    ],
  ];
  test.each(cases)('%s', (_, more, row) =>
    expect(rowOf('lifted roof edge', more)).toBe(`lifted roof edge | ${row}`),
  );
});

describe('the row of the roof holes', () => {
  const end = (more: Entries) => rowOf('roof holes', more)?.split(' | ').slice(-3);
  const cases: readonly [what: string, more: Entries, closing: string, out: string, unknown: string][] = [
    ['all told', {}, 'nothing', free, known],
    ['crew not known', { carries_crew: 'not known' }, 'nothing', free, 'whether the roof carries the crew'],
    ['crew refused', { carries_crew: 'no' }, 'nothing', 'the roof does not carry the crew', known],
    ['cover not known', { cover: '' }, 'nothing', free, 'what the roof is covered with'],
    [
      'a membrane',
      { cover: 'membrane' },
      'nothing',
      free,
      'how a patch is made in this cover: the rules here are for metal roofs, so ask a roofer',
    ],
    ['trusses not known', { truss_spacing: '', first_truss: '' }, 'nothing', free, 'where the trusses stand'],
    [
      'trusses measured, though not evenly spaced',
      {
        truss_spacing: '',
        first_truss: '',
        trusses_measured: [{ at: '0 in' }, { at: '26 in' }, { at: '160 in' }],
      },
      'nothing',
      free,
      known,
    ],
    [
      'neither crew nor cover known',
      { carries_crew: 'not known', cover: '' },
      'nothing',
      free,
      'whether the roof carries the crew; what the roof is covered with',
    ],
  ];
  test.each(cases)('%s', (_, more, ...row) => expect(end(more)).toEqual(row));

  test('a roof without room has no row: nothing to count, nothing to push', () => {
    // A hole of 6 in finds no place between trusses 7 in apart that are 1.5 in wide.
    expect(rowOf('roof holes', { truss_spacing: '7 in' })).toMatch(
      /^roof holes \| not known \| not known \| 0 \| nothing \| no row of holes finds room on this roof/,
    );
  });

  test('a row that departs from the rules is one that the crew leader has to take', () => {
    // A roof of 40 in has no place as far from both its ends as the layout asks.
    expect(end({ length: '40 in' })?.[2]).toBe(
      'whether the crew leader takes a row that departs from the rules of the layout',
    );
  });
});

describe('beside the three ways', () => {
  test('a section of a double-section home is told to be one', () => {
    expect(compared({ shape: 'one-slope' }).remarks).toEqual([expect.stringMatching(/^This is one section/)]);
    expect(compared({}).remarks).toEqual([]);
  });

  test('the cautions of all three stand', () => {
    expect(compared({}).cautions).toEqual([
      'caution.layout.framing',
      'caution.roof.carries-crew',
      'caution.hose.blind',
      'caution.hose.from-ladder',
      'caution.roof.falls',
      'caution.edge.sharp',
      'caution.roof.electric',
    ]);
  });

  test('where all are ruled out, none is left', () => {
    expect(compared({ gables: 'neither', edges: 'neither', carries_crew: 'no' }).figures.not_ruled_out).toBe(
      'none of the three',
    );
  });
});

const laneHome: Entries = {
  length: '42 ft 1 in',
  ends: 'both ends',
  shape: 'level',
  width: '12 ft 1 in',
  eave: '10 in',
  spread: '2 ft 1 in',
  density: '1.5 lb/ft3',
  bag_weight: '30 lb/bag',
};
const laned = (more: Entries = {}) => printed(lanes, { ...laneHome, ...more });
const noChord = expect.stringMatching(/^No truss spacing is given, so no chord is taken off/);
const flue = { along: '10 ft', across: '6 in' };

describe('what is printed of lanes', () => {
  test('figures and rows, to the tape and to three figures', () => {
    // 145 in over 50 in makes 3 lanes of 48.333 in; the first middle is at 24.167 in, 24 1/8 to the tape. A strip is
    // 48.333 x 10 / 144 = 3.3565 ft2. In all 42.0833 x 12.0833 x 10 / 12 = 423.75 ft3, times 1.5 over 30 21.19 bags, 7.06 a lane.
    const { figures, tables, remarks, cautions } = laned();
    expect(figures).toMatchObject({
      left: '0 in',
      left_at_best: '0 in',
      lanes: '3',
      lane_width: '4 ft 0 3/8 in',
      push: '21 ft 0 1/2 in',
      reach_low: '25 ft',
      reach_high: '35 ft',
      left_volume: '0 ft³',
      bags: '21.2 bags',
    });
    expect(tables.lanes?.[0]).toBe(
      '1 | 2 ft 0 1/8 in | 10 in | 3.36 ft² | 21 ft 0 1/2 in | 21 ft 0 1/2 in | 21 ft 0 1/2 in | 21 ft 0 1/2 in | 0 in | 0 ft³ | 7.06 bags | 7.06 bags',
    );
    expect(tables.lanes?.map((row) => row.split(' | ')[0])).toEqual(['1', '2', '3']);
    expect(remarks).toEqual([noChord]);
    expect(cautions).toEqual([
      'caution.layout.framing',
      'caution.hose.blind',
      'caution.hose.from-ladder',
      'caution.roof.falls',
      'caution.ceiling.trapped-air',
      'caution.before.wear',
    ]);
  });

  test('what one end alone can’t reach is left over', () => {
    // 505 in less 300 in, the least reach, is 205 in; less 420 in, 85 in.
    const { figures, tables, remarks } = laned({ ends: 'one end' });
    expect(figures).toMatchObject({ left: '17 ft 1 in', left_at_best: '7 ft 1 in', push: '42 ft 1 in' });
    // 205 x 48.333 x 10 / 1728 = 57.34 ft3, 2.867 bags of the 7.0625.
    expect(tables.lanes?.[1]).toMatch(
      / \| 25 ft \| 0 in \| 17 ft 1 in \| 57\.3 ft³ \| 7\.06 bags \| 4\.2 bags$/,
    );
    expect(remarks).toEqual([
      noChord,
      expect.stringMatching(/^What is left over has to be reached another way/),
    ]);
  });

  test('lanes that the hose does not fit are named with the room they have, the others are fed', () => {
    // From 0 at the eave to 3 in at the ridge, 72 in away: 24 in in 1 in is free, in the middle 3 in.
    const { tables, remarks } = laned({
      shape: 'two-slope',
      width: '12 ft',
      spread: '2 ft',
      eave: '0 in',
      ridge: '3 in',
    });
    expect(remarks[0]).toBe(
      'The hose is 2 in wide and does not fit along the middle of every lane: lane 1 has 1 in, lane 3 has 1 in. Such a lane is not fed from the gable; the whole of it is counted as left over.',
    );
    expect(remarks).toHaveLength(3);
    expect(tables.lanes?.[0]).toMatch(/ \| the hose does not fit \| the hose does not fit \| 42 ft 1 in \| /);
    expect(tables.lanes?.[1]).toMatch(/ \| 21 ft 0 1\/2 in \| 21 ft 0 1\/2 in \| 0 in \| /);
  });

  test('the room of a lane that does not fit is told to the tape, rounded down: 2/3 in has 5 eighths', () => {
    // 2 in in 72: at 24.1667 in of a roof 145 in wide it is 0.66667 in.
    expect(laned({ shape: 'two-slope', eave: '0 in', ridge: '2 in' }).remarks[0]).toMatch(
      'lane 1 has 5/8 in,',
    );
  });

  test('trusses are told of instead of the lack of them', () => {
    expect(laned({ truss_spacing: '24 in' }).remarks).toEqual([
      expect.stringMatching(/^The hose passes every truss on its way/),
    ]);
  });

  test('a flue on the way stops the hose before its ring, and what is left holds the stretch at the ring', () => {
    // Its ring is 10 in across, and the hose 2 in wide: 6 in from its middle. Of 12 ft lane 2 runs at 72 in. From the start
    // 120 - 6 = 114 in; from the far end 505 - 126 = 379 in to the ring, of which the hose reaches 300 in; left 505 - 114 - 300 = 91 in.
    // The column: pi/4 x 100 x 10 / 1728 = 0.4545 ft3, and 91 x 48 x 10 / 1728 - 0.4545 = 24.823 ft3. Bags: (505 x 480 / 1728 - 0.4545) x 1.5 / 30 = 6.991, and less 24.823 x 0.05 5.750.
    const { tables, remarks, cautions } = laned({
      width: '12 ft',
      spread: '2 ft',
      flues: [{ ...flue, at: '6 ft' }],
    });
    expect(tables.lanes?.[1]).toBe(
      '2 | 6 ft | 10 in | 3.33 ft² | 9 ft 6 in | 31 ft 7 in | 9 ft 6 in | 25 ft | 7 ft 7 in | 24.8 ft³ | 6.99 bags | 5.75 bags',
    );
    expect(remarks.at(-1)).toMatch(/^A lane that meets the ring about a flue counts/);
    expect(cautions[0]).toBe('caution.hose.flue-ahead');
  });

  test('a push to a ring is told to the eighth below, so that nobody stops inside the ring', () => {
    // From the start 120.24 - 6 = 114.24 in, 9 ft 6 1/8 in to the eighth below and 9 ft 6 1/4 in to the nearest.
    const to = (along: string) =>
      laned({ width: '12 ft', spread: '2 ft', flues: [{ ...flue, along, at: '6 ft' }] }).tables.lanes?.[1];
    expect(to('10.02 ft')).toMatch(/ \| 9 ft 6 1\/8 in \| [^|]* \| 9 ft 6 1\/8 in \| 25 ft \| /);
    // From the far end 505 - 360.3 - 6 = 138.7 in: 11 ft 6 5/8 in below, 11 ft 6 3/4 in the nearest.
    expect(to('30.025 ft')).toMatch(/ \| 11 ft 6 5\/8 in \| 25 ft \| 11 ft 6 5\/8 in \| /);
  });

  test('a flue between two lanes stops nothing, and is still kept clear of', () => {
    const { remarks, cautions, figures } = laned({
      width: '12 ft',
      spread: '2 ft',
      flues: [{ ...flue, at: '4 ft' }],
    });
    expect(figures.left).toBe('0 in');
    expect(remarks).toEqual([noChord]);
    expect(cautions[0]).toBe('caution.flue.keep-clear');
  });

  test.each([
    [
      'along',
      { along: '42 ft 1 in', at: '1 ft' },
      { along: '42 ft 1 1/8 in', at: '1 ft' },
      '42 ft 1 1/8 in along; expected a place inside the cavity, 42 ft 1 in along',
    ],
    [
      'across',
      { along: '1 ft', at: '12 ft 1 in' },
      { along: '1 ft', at: '12 ft 1 1/8 in' },
      '12 ft 1 1/8 in across; expected a place inside the cavity, 12 ft 1 in across',
    ],
  ])('a flue at the end %s is in the cavity, one beyond is refused', (_, at, beyond, says) => {
    const given = (place: Entries) => ({ ...laneHome, flues: [{ across: '6 in', ...place }] });
    expect(complaints(lanes, given(at))).toEqual([]);
    expect(complaints(lanes, given(beyond))).toEqual([expect.stringMatching(says)]);
  });

  test('forty lanes are worked, forty-one are refused', () => {
    // 164 in over twice 2.05 in is 40; over twice 2 in, 41.
    expect(complaints(lanes, { ...laneHome, width: '164 in', spread: '2.05 in' })).toEqual([]);
    expect(complaints(lanes, { ...laneHome, width: '164 in', spread: '2 in' })).toEqual([
      expect.stringMatching('found a spread that makes 41 lanes; expected 40 lanes at most'),
    ]);
  });
});

const bayHome: Entries = {
  length: '8 ft',
  truss_spacing: '24 in',
  first_truss: '0 in',
  edges: 'one edge',
  shape: 'level',
  width: '12 ft',
  eave: '10 in',
  density: '1.5 lb/ft3',
  bag_weight: '25 lb/bag',
};
const bayed = (more: Entries = {}) => printed(bays, { ...bayHome, ...more });

describe('what is printed of bays', () => {
  test('figures and rows, to the tape and to three figures', () => {
    // The two chords, 1.5 in deep and 1.5 in wide every 24 in, take 0.1875 in of the 10 in. A bay of 2 ft by 12 ft holds 19.625 ft3,
    // times 1.55 over 25 1.21675 bags; four hold 78.5 ft3, 4.867 bags. A tube 5 ft long leaves 7/12 of each bay: 11.448 ft3, and 0.50698 bags go in.
    const { figures, tables, remarks, cautions } = bayed({ density: '1.55 lb/ft3', reach: '5 ft' });
    expect(figures).toMatchObject({
      bags_a_bay: '1.22 bags',
      bays: '4',
      tube: '12 ft',
      reached: 'beyond reach',
      clear: '1 ft 10 1/2 in',
      volume: '78.5 ft³',
      left_volume: '45.79 ft³',
      bags: '4.87 bags',
      room_back: '10 in',
    });
    expect(tables.bays).toEqual([
      '1 | 0 in | 2 ft | 1 ft 10 1/2 in | 5 ft | 1.22 bags | 0.507 bags | 11.4 ft³',
      '2 | 2 ft | 4 ft | 1 ft 10 1/2 in | 5 ft | 1.22 bags | 0.507 bags | 11.4 ft³',
      '3 | 4 ft | 6 ft | 1 ft 10 1/2 in | 5 ft | 1.22 bags | 0.507 bags | 11.4 ft³',
      '4 | 6 ft | 8 ft | 1 ft 10 1/2 in | 5 ft | 1.22 bags | 0.507 bags | 11.4 ft³',
    ]);
    expect(remarks).toEqual([]);
    expect(cautions).toEqual([
      'caution.layout.framing',
      'caution.edge.sharp',
      'caution.hose.blind',
      'caution.hose.from-ladder',
      'caution.roof.falls',
      'caution.roof.electric',
      'caution.ceiling.trapped-air',
      'caution.before.wear',
    ]);
  });

  test('from both edges each side has its tube and its bags', () => {
    // Half of 19.625 ft3, times 1.5 over 25, is 0.58875 bags.
    const { tables } = bayed({ edges: 'both edges' });
    expect(tables.bays?.[0]).toMatch(/^1 \| 0 in \| 2 ft \| 1 ft 10 1\/2 in \| /);
    expect(tables.bays?.[0]?.split(' | ').slice(4).sort()).toEqual([
      '0 ft³',
      '0.589 bags',
      '0.589 bags',
      '0.589 bags',
      '0.589 bags',
      '6 ft',
      '6 ft',
    ]);
    const one = worked(bays, { ...bayHome, edges: 'both edges' });
    expect(Object.values(one.tables?.bays?.columns ?? {}).slice(4)).toEqual([
      'Tube in from the back edge',
      'Tube in from the front edge',
      'Bags for the back edge',
      'Bags for the front edge',
      'Of them within reach, to be blown through the back edge',
      'Of them within reach, to be blown through the front edge',
      'Volume left over',
    ]);
  });

  test('a tube to a ring is told to the eighth below, so that nobody stops inside the ring', () => {
    // The second bay is 36 in along in its middle. The ring is 10 in across and the tube 2 in wide: 120.24 - 6 = 114.24 in, 9 ft 6 1/8 in to
    // the eighth below and 9 ft 6 1/4 in to the nearest.
    const { tables } = bayed({ flues: [{ along: '36 in', at: '10.02 ft', across: '6 in' }] });
    expect(tables.bays?.[1]?.split(' | ')[4]).toBe('9 ft 6 1/8 in');
  });

  test('the largest bay stands for all, and of two as large the one between two trusses', () => {
    // The first truss at 24 in: the first bay is clear from the end of the roof to 23.25 in, the next for 22.5 in.
    expect(bayed({ first_truss: '24 in' }).figures.clear).toBe('1 ft 10 1/2 in');
    // At 12 in: half a bay at each end.
    expect(bayed({ first_truss: '12 in' }).figures).toMatchObject({ bays: '5', clear: '1 ft 10 1/2 in' });
  });

  test.each([
    ['25 ft', 'reaches'],
    ['30 ft', 'may not reach'],
    ['36 ft', 'beyond reach'],
  ])('across %s a flexible hose %s', (width, word) => {
    expect(bayed({ width }).figures.reached).toBe(word);
  });

  test('of two sides the worse is told', () => {
    const both = { ...lopsided, edges: 'both edges', tube: '1 in' };
    expect(bayed({ ...both, reach: '6 ft' }).figures).toMatchObject({ reached: 'reaches', tube: '6 ft' });
    expect(bayed({ ...both, reach: '5 ft' }).figures.reached).toBe('beyond reach');
    expect(bayed({ ...both, tube: '3 in' }).figures.reached).toBe('does not fit');
  });

  test('a tube that does not go in at one eave is told from where it would, and the other side is filled', () => {
    // From 1 in the roof is 3 in deep 8 in further in.
    const { tables, remarks } = bayed({ ...lopsided, edges: 'both edges', tube: '3 in' });
    expect(remarks).toEqual([
      'At the back eave 1 in are free, and the tube is 3 in wide: it does not go in there. The cavity is deep enough for it from 8 in inside the edge.',
      'What a tube that does not go in would have filled is counted as left over.',
    ]);
    expect(tables.bays?.[0]).toMatch(/\| does not fit \|/);
    expect(tables.bays?.[0]).toMatch(/\| 6 ft \|/);
  });

  test('from both sides of a lopsided roof the places are those of each side', () => {
    // 6 in: from the back (6 - 1) x 4 = 20 in; from the front (6 - 4) x 72/9 = 16 in.
    expect(bayed({ ...lopsided, edges: 'both edges', tube: '6 in' }).remarks.slice(0, 2)).toEqual([
      expect.stringMatching(/^At the back eave 1 in are free, .* from 1 ft 8 in inside the edge\.$/),
      expect.stringMatching(/^At the front eave 4 in are free, .* from 1 ft 4 in inside the edge\.$/),
    ]);
  });

  test('old insulation raises the place, and takes of the room', () => {
    // 2 in of tube above 2 in of old: 4 in deep is (4 - 1) x 4 = 12 in in; the far eave has 2 in left, where it just fits.
    expect(bayed({ ...lopsided, edges: 'both edges', old_depth: '2 in' }).remarks).toEqual([
      expect.stringMatching(/^At the back eave 0 in are free, .* from 1 ft inside the edge\.$/),
      expect.stringMatching('counted as left over'),
    ]);
  });

  test('a tube that fits nowhere is told so, its room to the tape, rounded down', () => {
    expect(bayed({ eave: '10.5555 in', tube: '11 in' }).remarks[0]).toBe(
      'At the lifted edge 10 1/2 in are free, and the tube is 11 in wide: it does not go in there. The cavity is nowhere deep enough for it on that side.',
    );
  });

  test('where trusses were measured here and there only, it is told that a bay may be several', () => {
    // By hand: the widest usual spacing is 24 in, and from 4 ft to the end of the 16 ft no truss is entered: 12 ft, more than 4 ft.
    const some = { length: '16 ft', truss_spacing: '', first_truss: '' };
    const measured = (...feet: number[]) =>
      bayed({ ...some, trusses_measured: feet.map((at) => ({ at: `${at} ft` })) });
    expect(measured(0, 2, 4).remarks[0]).toBe(
      'Over more than twice 24 in, the widest usual spacing, no truss is entered: what counts as one bay there may be several. Find every truss and enter it.',
    );
    expect(measured(0, 2, 4, 6, 8, 10, 12).remarks.join(' ')).not.toContain('no truss is entered');
  });

  test('a flue in the way stops the tube of its bay alone', () => {
    // 6 in before its middle at 5 ft: 4 ft 6 in. The bay holds 19.625 - pi/4 x 100 x 10 / 1728 = 19.170 ft3, 1.150 bags; beyond the
    // end of the push 7.5/12 of 19.625 less the column, 11.811 ft3: 7.359 ft3 go in, times 1.5 over 25 0.4415 bags.
    const { tables, cautions } = bayed({ flues: [{ along: '3 ft', at: '5 ft', across: '6 in' }] });
    expect(tables.bays?.[1]).toBe(
      '2 | 2 ft | 4 ft | 1 ft 10 1/2 in | 4 ft 6 in | 1.15 bags | 0.442 bags | 11.8 ft³',
    );
    expect(tables.bays?.[0]).toMatch(/ \| 12 ft \| 1\.18 bags \| 1\.18 bags \| 0 ft³$/);
    expect(cautions[0]).toBe('caution.hose.flue-ahead');
  });

  test('a flue beside a truss stops nothing, and is still kept clear of', () => {
    expect(bayed({ flues: [{ along: '4 ft', at: '5 ft', across: '6 in' }] }).cautions[0]).toBe(
      'caution.flue.keep-clear',
    );
    expect(bayed({ flues: [] }).cautions[0]).toBe('caution.layout.framing');
  });

  test('a flue past the ridge stops the tube of the nearer edge, and that of the other goes on to it', () => {
    // From the front edge it stands 12 ft - 9 ft = 3 ft in: 6 in before it is 2 ft 6 in. From the back edge 9 ft - 6 in, past the ridge at 6 ft.
    const row = bayed({ edges: 'both edges', flues: [{ along: '3 ft', at: '9 ft', across: '6 in' }] }).tables
      .bays?.[1];
    expect(row).toMatch(/\| 8 ft 6 in \|/);
    expect(row).toMatch(/\| 2 ft 6 in \|/);
  });
});
