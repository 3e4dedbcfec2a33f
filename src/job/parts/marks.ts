import { hoseMarkings } from '../../calc/marks/declaration.ts';
import { USUAL_WAY, wayTaken } from '../way-taken.ts';
import { markedOpenings, saidOfMarks } from './marked-openings.ts';
import { part } from './part.ts';

/** The hose marks of every opening of the plan, each a run of its own. */
export const marksPart = part({
  calculation: hoseMarkings,
  asked: {
    along: 'roof.truss_spacing',
    width: 'cavity.width',
    stream_reach: 'hose.stream_reach',
    stand_off: 'hose.stand_off',
    reach: 'hose.reach',
    truss_spacing: 'roof.truss_spacing',
    first_truss: 'roof.first_truss',
    trusses_measured: 'roof.trusses_measured',
    flues: 'roof.obstacles',
  },
  runs: (plan, rules) => {
    const way = wayTaken(plan.job);
    if (way !== USUAL_WAY)
      return `The way taken is the ${way}: the sheet of the ways in tells how far the hose goes in.`;
    const openings = markedOpenings(plan, rules);
    if (openings.length === 0) return 'The plan has no openings yet, so there is nothing to mark.';
    const said = saidOfMarks(plan, rules);
    return openings.map(({ title, values, flues }, place) => ({
      title,
      values,
      entries: { flues },
      remarks: said[place] ?? [],
    }));
  },
});
