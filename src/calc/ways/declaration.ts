import type { CautionId } from '../../generated/rule-types.ts';
import { sectionFields } from '../cavity/fields.ts';
import { cavitySection } from '../cavity/section.ts';
import { calculation, type Figure } from '../declare/calculation.ts';
import { choiceField, lengthField, optional } from '../declare/field.ts';
import { alongFields } from '../holes/fields.ts';
import { covers, edgeAnswers, gableAnswers, type WayIn, waysIn, yesOrNo } from './compare.ts';
import { inCavityFields, tubeField } from './in-cavity-fields.ts';

/** A hose that is shorter than the longest push does not get there. */
const pushNeeded = { tape: 8, round: 'up' } as const;

/** The names of a way's figures begin so. */
const short = { 'gable end': 'gable', 'roof holes': 'holes', 'lifted roof edge': 'edge' } as const;

export const compareWays = calculation({
  name: 'ways-in',
  title: 'Ways into the cavity',
  question:
    'Roof holes, a gable end or the lifted edge: what does each ask for on this home, and what rules it out?',
  fields: {
    length: lengthField('L', 'Length of the roof', 'Along the ridge, from end to end.', '66 ft'),
    ...sectionFields,
    cover: optional(choiceField('Roof cover', 'What the rain falls on.', covers)),
    carries_crew: choiceField(
      'Does the roof carry the crew?',
      'Yes only once someone has looked, inside and outside.',
      yesOrNo,
    ),
    gables: choiceField(
      'Gable ends that can be opened',
      'Ends where a hose can be fed in and people can stand to feed it.',
      gableAnswers,
    ),
    edges: choiceField(
      'Edges that can be lifted',
      'Long sides of the roof, clear of awnings and additions.',
      edgeAnswers,
    ),
    ...inCavityFields,
    sections: optional(
      choiceField(
        'Sections of the home',
        'Of a double one, one section is compared: its ridge is over the marriage line.',
        ['single', 'double'],
      ),
    ),
    tube: tubeField,
    hot_in_cavity: choiceField(
      'Hot flues or lights in the cavity',
      'A hose stops before the ring about each.',
      yesOrNo,
    ),
    ...alongFields,
  },
  example: {
    length: '66 ft',
    shape: 'bowed',
    width: '13 ft 10 in',
    eave: '3 in',
    ridge: '15 in',
    cover: 'metal',
    carries_crew: 'not known',
    gables: 'both ends',
    edges: 'one edge',
    hot_in_cavity: 'yes',
    old_depth: '2 in',
    truss_spacing: '24 in',
    first_truss: '0 in',
    seam_spacing: '4 ft',
    first_seam: '0 in',
  },
  work: (
    { length, cover, carries_crew, gables, edges, old_depth, reach, sections, tube, hot_in_cavity, ...rest },
    rules,
  ) => {
    const found = waysIn(
      {
        length,
        section: cavitySection(rest),
        oldDepth: old_depth,
        along: rest,
        cover,
        carriesCrew: carries_crew,
        gables,
        edges,
        reach,
        tube,
        half: sections === 'double',
        hotInCavity: hot_in_cavity,
      },
      rules,
    );
    const open = found.filter(({ ruledOut }) => ruledOut.length === 0).map(({ way }) => way);
    const figures: Record<string, Figure> = {
      not_ruled_out: {
        label: 'Not ruled out by what is entered',
        value: open.length > 0 ? open.join(', ') : 'none of the three',
      },
    };
    for (const each of found) {
      const name = short[each.way];
      if (each.openings)
        figures[`${name}_openings`] = { label: `Openings, ${each.way}`, value: each.openings };
      if (each.push)
        figures[`${name}_push`] = {
          label: `Longest push, ${each.way}`,
          value: each.push,
          format: pushNeeded,
        };
    }
    const cautions: CautionId[] = [
      'caution.layout.framing',
      'caution.roof.carries-crew',
      'caution.hose.blind',
      'caution.hose.from-ladder',
      'caution.roof.falls',
      'caution.edge.sharp',
      'caution.roof.electric',
    ];
    return {
      figures,
      tables: {
        ways: {
          title: 'The three ways in',
          columns: {
            way: 'Way in',
            openings: 'Openings',
            push: 'Longest push',
            patches: 'Patches to make on the roof',
            closing: 'Else to close again',
            ruled_out: 'What rules it out',
            unknown: 'Not known yet',
          },
          rows: found.map(row),
          format: { push: pushNeeded },
        },
      },
      cautions,
      remarks:
        rest.shape === 'one-slope' || sections === 'double'
          ? ['This is one section of a double-section home; the other is worked in the same way.']
          : [],
    };
  },
});

const listed = (all: readonly string[], none: string): string => (all.length > 0 ? all.join('; ') : none);

const row = ({ way, openings, push, patches, closing, ruledOut, unknown }: WayIn) => ({
  way,
  openings: openings ?? 'not known',
  push: push ?? 'not known',
  patches,
  closing: closing || (openings || unknown.length === 0 ? 'nothing' : 'not known'),
  ruled_out: listed(ruledOut, 'nothing that was entered'),
  unknown: listed(unknown, 'nothing that is asked here'),
});
