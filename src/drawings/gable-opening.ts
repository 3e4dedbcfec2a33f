import { ridgeAcross } from '../calc/cavity/opening.ts';
import type { Section } from '../calc/cavity/section.ts';
import type { Ring } from '../calc/ways/flue-ring.ts';
import type { Lane, Lanes } from '../calc/ways/lanes.ts';
import { ofRoom } from '../calc/ways/strip.ts';
import { format } from '../quantity/format.ts';
import { inches, type Quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { breakLine } from './break-line.ts';
import { dimension } from './dimension.ts';
import { hatches, hatchId } from './hatch.ts';
import { illustration } from './illustration.ts';
import { circle, hatched, line, type Point, path, text } from './lines.ts';
import { type PageSize, pageSheets, pushTape, tape } from './page-sheet.ts';
import { MOST_BAR, scaleBar } from './scale-bar.ts';
import { placesAcross } from './section-sheet.ts';
import type { Drawing, Shape } from './svg.ts';
import { type At, underChord } from './truss-members.ts';

/** What is filled from its gable. */
export interface GableCavity {
  readonly section: Section;
  readonly oldDepth: Quantity<'length'>;
  readonly length: Quantity<'length'>;
  readonly rings: readonly Ring[];
}

/** Where the gable end and the plan stand, in drawing units; a narrow sheet shows the gable end up to its ridge. */
const sheets = {
  wide: { left: 36, drawn: 628, ridge: 122, half: false, plan: { left: 36, drawn: 628 } },
  narrow: { left: 22, drawn: 290, ridge: 122, half: true, plan: { left: 22, drawn: 304 } },
} as const;

/** The gable end with the openings cut in it, lane by lane; and the lanes from above, with what the pushes cover. Each to its scale. */
export function gableOpeningDrawing(
  found: Lanes,
  cavity: GableCavity,
  rules: Rulebook,
  size: PageSize,
  name: string,
): Drawing {
  const { width, text: letters } = pageSheets[size];
  const end = elevation(found, cavity, rules, size);
  const plan = fromAbove(found, cavity, size, end.foot + 76, name);
  const shown = found.lanes.filter(({ feedable }) => feedable);
  const first = found.lanes[0];
  return {
    width,
    height: plan.foot + 6,
    secondFrom: end.foot + 4,
    title: 'The gable end with its openings, and the lanes behind it',
    description: `The width of ${tape(cavity.section.width)} is shared into ${found.lanes.length} lanes, each ${tape(found.laneWidth)} wide. ${shown.map((lane) => `Lane ${lane.number}: the hose runs ${tape(lane.middle)} from the eave, with ${format(lane.room, ofRoom)} free`).join('; ')}. ${first ? `From each end a push covers ${pushTape(first.fromStart)} of ${tape(cavity.length)}, and ${tape(first.left)} between them are left over` : 'No lane is fed'}${found.lanes.some(({ stopsAtRing }) => stopsAtRing) ? '; a lane with a flue in its way stops before the ring kept open about it' : ''}.`,
    shapes: [
      hatches(name),
      text([14, 18], 'the gable end from outside', { anchor: 'start', size: letters, bold: true }),
      ...end.shapes,
      text([14, end.foot + 22], 'the lanes from above', { anchor: 'start', size: letters, bold: true }),
      ...plan.shapes,
    ],
  };
}

/** Where along its line a break stands clear of the lanes' edges. */
const BREAK = 0.4;

interface View {
  readonly shapes: Shape[];
  readonly foot: number;
}

/** The gable end from outside: what lies behind the sheathing dashed, an opening in each lane that the hose goes in, the hose in it. */
function elevation(found: Lanes, { section, oldDepth }: GableCavity, rules: Rulebook, size: PageSize): View {
  const { text: letters } = pageSheets[size];
  const { left, drawn, ridge: top, half } = sheets[size];
  const { profile } = section;
  const ridge = inches(ridgeAcross(section));
  const to = half ? ridge : profile.width;
  const perInch = drawn / to;
  const ceiling = top + profile.depthAt(ridge) * perInch;
  const at: At = (across, height) => [left + across * perInch, ceiling - height * perInch];
  const { overhang, wallShown, turnedDown } = illustration;
  const chord = inches(rules.value('framing.truss.chord-depth'));
  const hose = inches(found.hose);
  const low = Math.max(chord, inches(oldDepth));
  const places = placesAcross(profile, 0, to);
  const part = { profile, from: 0, to, chord };
  const lanes = found.lanes.filter(({ middle }) => inches(middle) < to);
  const wallFoot = -wallShown;
  const under = at(0, wallFoot)[1];
  return {
    foot: under + 98,
    shapes: [
      path(
        'hidden',
        places.map((x) => at(x, underChord(part, x))),
      ),
      line('hidden', at(0, chord), at(to, chord)),
      line('hidden', at(0, 0), at(to, 0)),
      path('outline', [
        at(-overhang, profile.depthAt(0) - turnedDown),
        at(-overhang, profile.depthAt(0)),
        ...places.map((x) => at(x, profile.depthAt(x))),
        ...(half
          ? []
          : [at(to + overhang, profile.depthAt(to)), at(to + overhang, profile.depthAt(to) - turnedDown)]),
      ]),
      line('outline', at(0, profile.depthAt(0)), at(0, wallFoot)),
      ...(half
        ? [line('centre', [at(to, 0)[0], top - 10], at(to, wallFoot - 2))]
        : [
            line('outline', at(to, profile.depthAt(to)), at(to, wallFoot)),
            line('centre', [at(ridge, 0)[0], top - 10], at(ridge, wallFoot)),
          ]),
      breakLine(at(-overhang, wallFoot), at(half ? to : to + overhang, wallFoot), BREAK),
      ...lanes.flatMap((lane): Shape[] => {
        const [middle, from, until] = [lane.middle, lane.from, lane.to].map(inches) as [
          number,
          number,
          number,
        ];
        const edge = inches(lane.to);
        return [
          ...(lane.feedable ? opening(part, middle, { hose, low }, at) : []),
          ...(edge < to && Math.abs(edge - ridge) > 1e-6
            ? [line('boundary', [at(edge, 0)[0], top - 10], at(edge, wallFoot))]
            : []),
          text([at(middle, 0)[0], top - 60], `lane ${lane.number}`, { size: letters, bold: true }),
          text([at(middle, 0)[0], top - 42], `at ${tape(lane.middle)}`, { size: letters }),
          text([at(middle, 0)[0], top - 24], roomOf(lane), { size: letters }),
          ...dimension([at(from, 0)[0], under], [at(until, 0)[0], under], 34, tape(found.laneWidth), letters),
        ];
      }),
      ...scaleBar([left, under + 62], MOST_BAR, perInch),
    ],
  };
}

const roomOf = (lane: Lane): string => (lane.feedable ? `${format(lane.room, ofRoom)} free` : 'no way in');

/** An opening between the chords with the end of the hose in it, to scale; how wide it is cut only illustrates. */
function opening(
  part: Parameters<typeof underChord>[0],
  middle: number,
  { hose, low }: { readonly hose: number; readonly low: number },
  at: At,
): Shape[] {
  const half = 2 * hose;
  const { cutClear } = illustration;
  const [floor, roof] = [
    low + cutClear,
    Math.min(underChord(part, middle - half), underChord(part, middle + half)) - cutClear,
  ];
  const middleHigh = (floor + roof) / 2;
  const high = Math.min(half, (roof - floor) / 2);
  const corners: Point[] = [
    at(middle - half, middleHigh - high),
    at(middle - half, middleHigh + high),
    at(middle + half, middleHigh + high),
    at(middle + half, middleHigh - high),
  ];
  const centre = at(middle, middleHigh);
  const reach = Math.abs(at(hose, 0)[0] - at(0, 0)[0]);
  return [
    path('outline', corners, true),
    circle('outline', centre, reach / 2),
    line('centre', [centre[0] - reach, centre[1]], [centre[0] + reach, centre[1]]),
    line('centre', [centre[0], centre[1] - reach], [centre[0], centre[1] + reach]),
  ];
}

/** The lanes from above: what each push covers hatched, what is left over blank, the rings kept open. */
function fromAbove(
  found: Lanes,
  { section, length, rings }: GableCavity,
  size: PageSize,
  top: number,
  name: string,
): View {
  const { text: letters } = pageSheets[size];
  const { left, drawn } = sheets[size].plan;
  const long = inches(length);
  const wide = inches(section.width);
  const perInch = drawn / long;
  const at = (along: number, across: number): Point => [
    left + along * perInch,
    top + (wide - across) * perInch,
  ];
  const bottom = at(0, 0)[1];
  const ridge = inches(ridgeAcross(section));
  const box = (a: number, b: number, { from, to }: Lane): Point[] => [
    at(a, inches(from)),
    at(b, inches(from)),
    at(b, inches(to)),
    at(a, inches(to)),
  ];
  const [first] = found.lanes;
  const ends = first ? [inches(first.fromStart), long - inches(first.fromFarEnd)] : [];
  return {
    foot: bottom + 86,
    shapes: [
      ...found.lanes.flatMap((lane): Shape[] => {
        const covered: [number, number][] = [
          [0, inches(lane.fromStart)],
          [long - inches(lane.fromFarEnd), long],
        ];
        return [
          ...covered.flatMap(([a, b]) =>
            b > a
              ? [hatched(box(a, b, lane), hatchId(name, 'new-fill')), path('thin', box(a, b, lane), true)]
              : [],
          ),
          text([left - 10, at(0, inches(lane.middle))[1] + 4], String(lane.number), { size: 12, bold: true }),
        ];
      }),
      path('outline', [at(0, 0), at(0, wide), at(long, wide), at(long, 0)], true),
      line('centre', at(-8 / perInch, ridge), at(long + 8 / perInch, ridge)),
      ...rings.flatMap((ring) =>
        ringShape(at(inches(ring.along), inches(ring.at)), (inches(ring.across) / 2) * perInch),
      ),
      ...(first && ends[1] !== undefined && ends[0] !== undefined
        ? [
            ...dimension(
              at(0, wide),
              at(ends[0], wide),
              -18,
              pushTape(first.fromStart),
              letters,
              orReach(first.fromStart, found),
            ),
            ...dimension(at(ends[0], wide), at(ends[1], wide), -18, tape(first.left), letters),
            ...dimension(
              at(ends[1], wide),
              at(long, wide),
              -18,
              pushTape(first.fromFarEnd),
              letters,
              orReach(first.fromFarEnd, found),
            ),
          ]
        : []),
      ...dimension(at(0, 0), at(long, 0), 28, tape(length), letters),
      ...scaleBar([left, bottom + 56], long / 4, perInch),
    ],
  };
}

/** A push as long as the hose surely reaches tells the reach itself, which may be a rule's own value. */
const orReach = (pushed: Quantity<'length'>, { reach }: Lanes): Quantity<'length'> =>
  inches(pushed) === inches(reach.low) ? reach.low : pushed;

/** A ring as large as it is, and never too small to be seen: crossed. */
function ringShape([x, y]: Point, radius: number): Shape[] {
  const r = Math.max(4, radius);
  const arm = r * Math.SQRT1_2;
  return [
    circle('outline', [x, y], r),
    line('thin', [x - arm, y - arm], [x + arm, y + arm]),
    line('thin', [x - arm, y + arm], [x + arm, y - arm]),
  ];
}
