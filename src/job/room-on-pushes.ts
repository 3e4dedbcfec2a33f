import { printed, type Remark, said } from '../calc/declare/remark.ts';
import { fits, roomForHose } from '../calc/ways/strip.ts';
import { byMethod, inches, type Quantity, quantity } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { WorkedJob } from './planned.ts';

/** As fine as a tape is read, in inches, and as near as a place is closed in on: far nearer, so that like eaves are told alike. */
const MARK = 1 / 8;
const NEAR = MARK / 10_000;

/** An eave that the pushes of an opening run to, its place across in inches, and the way to it. */
interface Eave {
  readonly name: string;
  readonly at: number;
  readonly way: 1 | -1;
}

/**
 * Where does a hose that is pushed from an opening have no room, nearer to an eave than its tip goes? Between two trusses it lies on the
 * old insulation, across one it passes between the chords. Nothing is said where it has room all the way.
 * By hand: over 9 in of old insulation a cavity of 10 in has no room for a hose of 2 in, between trusses or across them.
 * @example roomOnPushes({ ...plan, section: cavitySection({ shape: 'level', width: quantity(14, 'ft'), eave: quantity(10, 'in') }), oldOnceFilled: quantity(9, 'in') }, quantity(4, 'ft'), rules).length // => 2
 */
export function roomOnPushes(plan: WorkedJob, across: Quantity<'length'>, rules: Rulebook): Remark[] {
  const { section, oldOnceFilled: oldDepth } = plan;
  const hose = rules.value('access.hose.diameter');
  const tip = plan.job.hose.stand_off ? inches(plan.job.hose.stand_off) : 0;
  const width = inches(section.width);
  const eaves: readonly Eave[] =
    plan.rows.length > 1
      ? [{ name: 'the eave', at: 0, way: -1 }]
      : [
          { name: 'the eave on the back side', at: 0, way: -1 },
          { name: 'the eave on the front side', at: width, way: 1 },
        ];
  const hasRoom = (at: number, acrossTrusses: boolean): boolean =>
    fits(hose, roomForHose(section, quantity(at, 'in'), { oldDepth }, acrossTrusses, rules));

  /** How near to an eave it has room; undefined where that is as near as its tip goes. */
  const nearest = ({ at, way }: Eave, acrossTrusses: boolean): Quantity<'length'> | undefined => {
    const [from, to] = [inches(across), at - way * tip];
    const between = section.profile.corners.filter(
      (each) => (each - from) * way > 0 && (to - each) * way > 0,
    );
    const places = [from, ...between.sort((a, b) => (a - b) * way), to];
    const shut = places.findIndex((place) => !hasRoom(place, acrossTrusses));
    if (shut < 0) return undefined;
    // Between corners the roof rises or falls all the way, so the last place with room is closed in on.
    let [open, closed] = [places[shut - 1] ?? from, places[shut] ?? to];
    while (Math.abs(closed - open) > NEAR) {
      const middle = (open + closed) / 2;
      if (hasRoom(middle, acrossTrusses)) open = middle;
      else closed = middle;
    }
    return byMethod(
      'the nearest place to the eave with room for the hose',
      [...section.told, hose, across, ...(oldDepth ? [oldDepth] : [])],
      Math.ceil((Math.abs(at - open) - 2 * NEAR) / MARK) * MARK,
      'in',
    );
  };

  const over = oldDepth ? 'over the old insulation' : 'in the cavity';
  return [false, true].flatMap((acrossTrusses) => {
    if (!hasRoom(inches(across), acrossTrusses))
      return [
        acrossTrusses
          ? said`Across a truss the hose, ${hose} wide, has no room between the chords, not even at the opening: push it between two trusses alone, or go by another of the ways in.`
          : said`At the opening itself the hose, ${hose} wide, has no room ${over}: go by another of the ways in, and force nothing.`,
      ];
    const found = eaves.flatMap((eave) => {
      const place = nearest(eave, acrossTrusses);
      return place ? [{ name: eave.name, place }] : [];
    });
    const [first, second] = found;
    const alike = first && second && inches(first.place) === inches(second.place);
    return (alike ? [{ ...first, name: 'either eave' }] : found).map(({ name, place }) => {
      const told = printed(place, { tape: 8, round: 'up' });
      return acrossTrusses
        ? said`Across a truss the hose, ${hose} wide, has room between the chords no nearer than ${told} to ${name}: past that go between two trusses, and force nothing.`
        : said`Nearer than ${told} to ${name} the hose, ${hose} wide, has no room ${over}: stop it there, whatever its mark, and force nothing.`;
    });
  });
}
