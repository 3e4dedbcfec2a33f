import { format } from '../../quantity/format.ts';
import { compare, inUnit, minus, named, over, plus, type Quantity, times } from '../../quantity/quantity.ts';
import { calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import { choiceField, lengthField, optional, quantityField } from '../declare/field.ts';
import { naiveResistance, taperedTransmittance, taperForms } from './transmittance.ts';

const resistanceField = (symbol: string, label: string, hint: string, example: string) =>
  quantityField({
    dimension: 'thermal resistance',
    beside: 'h ft2 F/Btu',
    symbol,
    label,
    hint,
    example,
    zero: 'allowed',
    most: '500 h ft2 F/Btu',
  });

export const taper = calculation({
  name: 'tapered-transmittance',
  title: 'Heat through a taper',
  question: 'What R does tapered insulation really give?',
  fields: {
    form: choiceField(
      'Form of the taper',
      'A straight taper: a wedge of one width, thin to thick. Triangles meet at an apex.',
      taperForms,
    ),
    constant: resistanceField(
      'Rc',
      'R of everything uniform',
      'Air films, ceiling, old insulation.',
      '1.23 h·ft²·°F/Btu',
    ),
    thin: resistanceField(
      'Ra',
      'R of the insulation at its thinnest',
      'R per inch times the least depth.',
      '10.5 h·ft²·°F/Btu',
    ),
    thick: optional(
      resistanceField(
        'Rb',
        'R of the insulation at its thickest',
        'R per inch times the greatest depth; not for a uniform layer.',
        '52.5 h·ft²·°F/Btu',
      ),
    ),
  },
  example: {
    form: 'straight taper',
    constant: '1.23 h·ft²·°F/Btu',
    thin: '10.5 h·ft²·°F/Btu',
    thick: '52.5 h·ft²·°F/Btu',
  },
  work: ({ form, constant, thin, thick: given }) => {
    const thick = form === 'uniform' ? thin : given;
    const refuse = (found: string, expected: string): never => {
      throw new EntriesClash({
        field: 'thick',
        label: 'R of the insulation at its thickest',
        found,
        expected,
      });
    };
    if (!thick) return refuse('nothing', 'an R, since the layer is not uniform');
    if (compare(thick, thin) < 0)
      return refuse(
        `${format(thick)}, less than the thinnest at ${format(thin)}`,
        'the thickest to be the more',
      );
    const r0 = named(plus(constant, thin), 'R0', 'R where it is thinnest');
    if (r0.amount === 0) return refuse('no resistance at all at the thinnest place', 'an R above 0 there');
    const r2 = named(minus(thick, thin), 'R2', 'R that the taper adds');
    const { transmittance, resistance } = taperedTransmittance(form, r0, r2);
    const figures: Record<string, Figure> = {
      resistance: { label: 'Effective R', value: resistance, format: { figures: 3 } },
      transmittance: { label: 'Mean transmittance', value: transmittance },
    };
    // A uniform layer has its mean depth everywhere, and nothing is overstated.
    if (form !== 'uniform')
      figures.naive = {
        label: 'R of the mean depth, which overstates',
        value: naiveResistance(form, constant, thin, thick),
        format: { figures: 3 },
      };
    return { figures, cautions: [], remarks: [] };
  },
});

const edgeKinds = ['blown', 'batt, tapered', 'batt, squeezed evenly'] as const;

const columns = {
  blown: 'blown',
  'batt, tapered': 'batt-tapered',
  'batt, squeezed evenly': 'batt-even',
} as const;

export const restrictedEdge = calculation({
  name: 'restricted-edge',
  title: 'Restricted edge',
  question: 'What R is left over the part of the roof where the insulation is thinned towards the eave?',
  fields: {
    kind: choiceField(
      'Insulation',
      'Blown, or a batt that tapers, or a batt pressed to one thickness.',
      edgeKinds,
    ),
    nominal: resistanceField('Rf', 'Nominal R', 'At the full thickness.', '25 h·ft²·°F/Btu'),
    thickness: lengthField('tf', 'Full thickness', 'Of the insulation where nothing restricts it.', '10 in', {
      most: '6 ft',
    }),
    edge: lengthField('te', 'Thickness at the edge', 'Where it is thinnest.', '2 in', {
      zero: 'allowed',
      most: '6 ft',
    }),
  },
  example: { kind: 'blown', nominal: '25 h·ft²·°F/Btu', thickness: '10 in', edge: '2 in' },
  work: ({ kind, nominal, thickness, edge }, rules) => {
    if (compare(edge, thickness) > 0) {
      throw new EntriesClash({
        field: 'edge',
        label: 'Thickness at the edge',
        found: `${format(edge)}, more than the full ${format(thickness)}`,
        expected: 'an edge no thicker than the rest',
      });
    }
    const ratio: Quantity<'number'> = named(
      inUnit(over(edge, thickness), 'percent'),
      'p',
      'Edge to full thickness',
    );
    const kept = rules.find('thermal.taper.restricted', { ratio }, columns[kind]);
    if (!kept)
      throw new EntriesClash({
        field: 'edge',
        label: 'Thickness at the edge',
        found: format(ratio),
        expected: 'a ratio that the table holds',
      });
    return {
      figures: {
        resistance: {
          label: 'R over the restricted part',
          value: named(times(nominal, kept.low), 'Rr', 'R over the restricted part'),
        },
        kept: { label: 'Share of the nominal R kept', value: kept.low },
        ratio: { label: 'Edge to full thickness', value: ratio },
      },
      cautions: [],
      remarks: [],
    };
  },
});
