import { format } from '../../quantity/format.ts';
import { compare, named, type Quantity, times } from '../../quantity/quantity.ts';
import { calculation, EntriesClash, type Figure } from '../declare/calculation.ts';
import {
  choiceField,
  lengthField,
  listField,
  optional,
  quantityField,
  type Values,
  wordsField,
} from '../declare/field.ts';
import {
  besideInLayer,
  inParallel,
  inSeries,
  layerResistance,
  resistanceOf,
  transmittanceOf,
} from './layers.ts';

/** How two paths side by side are put together; the first is taken where none is chosen. */
const methods = ['parallel path', 'isothermal planes'] as const;

const layerFields = {
  what: optional(wordsField('What it is', 'Its name, for the table.', 'ceiling board')),
  resistance: optional(
    quantityField({
      dimension: 'thermal resistance',
      beside: 'h ft2 F/Btu',
      symbol: 'R',
      label: 'R of the layer',
      hint: 'Of an air film, an air space, or a layer whose R is known.',
      example: '0.45 h ft² F/Btu',
      zero: 'allowed',
      most: '500 h ft2 F/Btu',
    }),
  ),
  thickness: optional(
    lengthField('t', 'Thickness', 'With a conductivity or an R per inch, in place of an R.', '1/2 in', {
      zero: 'allowed',
      most: '6 ft',
    }),
  ),
  conductivity: optional(
    quantityField({
      dimension: 'thermal conductivity',
      symbol: 'k',
      label: 'Conductivity',
      hint: 'Of the material.',
      example: '0.16 W/(m K)',
      zero: 'refused',
      most: '500 W/(m K)',
    }),
  ),
  per_inch: optional(
    quantityField({
      dimension: 'resistance per length',
      beside: 'h ft2 F/(Btu in)',
      symbol: 'r',
      label: 'R per inch',
      hint: 'In place of a conductivity.',
      example: '3.5 R per in',
      zero: 'allowed',
      most: '20 R per in',
    }),
  ),
} as const;

type LayerValues = Values<typeof layerFields>;

/** The R of one layer as it was entered. @throws EntriesClash unless it is given in exactly one way. */
function resistanceGiven(layer: LayerValues, way: string): Quantity<'thermal resistance'> {
  const { resistance, thickness, conductivity, per_inch } = layer;
  if (resistance && !thickness && !conductivity && !per_inch) return resistance;
  if (thickness && conductivity && !resistance && !per_inch) return layerResistance(thickness, conductivity);
  if (thickness && per_inch && !resistance && !conductivity) return times(thickness, per_inch);
  const found = Object.entries({
    'an R': resistance,
    'a thickness': thickness,
    'a conductivity': conductivity,
    'an R per inch': per_inch,
  }).flatMap(([name, value]) => (value ? [name] : []));
  throw new EntriesClash({
    field: `${way}.resistance`,
    label: 'R of the layer',
    found: found.length === 0 ? 'nothing' : found.join(' and '),
    expected: 'an R alone, or a thickness with a conductivity or with an R per inch',
  });
}

interface Path {
  readonly layers: readonly { readonly name: string; readonly resistance: Quantity<'thermal resistance'> }[];
  readonly resistance: Quantity<'thermal resistance'>;
  readonly transmittance: Quantity<'thermal transmittance'>;
}

function path(
  entered: readonly LayerValues[],
  field: 'layers' | 'second',
  naming: { readonly suffix: string; readonly label: string },
): Path {
  const layers = entered.map((layer, place) => ({
    name: layer.what ?? `layer ${place + 1}`,
    resistance: named(
      resistanceGiven(layer, `${field}.${place}`),
      `R${naming.suffix}${place + 1}`,
      layer.what ?? `R of layer ${place + 1}`,
    ),
  }));
  const complain = (found: string, expected: string): never => {
    throw new EntriesClash({ field, label: naming.label, found, expected });
  };
  if (layers.length === 0) complain('no layers', 'one or more');
  const sum = named(
    inSeries(layers.map(({ resistance }) => resistance)),
    `R${naming.suffix}`,
    `R, ${naming.label}`,
  );
  if (sum.amount === 0)
    complain('layers with no R at all', 'an R above 0 in all; did you leave the films out?');
  return {
    layers,
    resistance: sum,
    transmittance: named(transmittanceOf(sum), `U${naming.suffix}`, `U, ${naming.label}`),
  };
}

/** Two paths put together layer by layer, all of a layer's face at one temperature. @throws EntriesClash for no R at all. */
function byPlanes(first: Path, second: Path, share: Quantity<'number'>): Path {
  const layers = first.layers.map(({ name, resistance }, place) => {
    const other = second.layers[place] ?? { name, resistance };
    return {
      name: other.name === name ? name : `${name}, ${other.name}`,
      resistance: named(
        besideInLayer(resistance, other.resistance, share),
        `Rp${place + 1}`,
        `R of layer ${place + 1}, both paths`,
      ),
    };
  });
  const sum = named(inSeries(layers.map(({ resistance }) => resistance)), 'Re', 'Effective R');
  if (sum.amount === 0)
    throw new EntriesClash({
      field: 'second',
      label: 'Layers of the second path',
      found: 'in each layer one path with no R at all',
      expected: 'a layer in which both have one',
    });
  return {
    layers,
    resistance: sum,
    transmittance: named(transmittanceOf(sum), 'U', 'Transmittance, both paths together'),
  };
}

export const layers = calculation({
  name: 'layers',
  title: 'Layers',
  question: 'What R and U do layers in series give, and two such paths side by side?',
  fields: {
    layers: listField('Layers', 'From the room outwards, air films included.', 'a layer', layerFields),
    second: optional(
      listField(
        'Layers of the second path',
        'Where another path lies beside the first, such as framing: all its layers, films included.',
        'a layer of the second path',
        layerFields,
      ),
    ),
    second_share: optional(
      quantityField({
        dimension: 'number',
        beside: 'percent',
        symbol: 'f',
        label: 'Share of the second path',
        hint: 'Of the whole area.',
        example: '10 %',
        zero: 'allowed',
        most: '100 %',
      }),
    ),
    method: optional(
      choiceField(
        'Method',
        'Left empty, the parallel-path method. By isothermal planes both paths have the same number of layers, each beside its like.',
        methods,
      ),
    ),
  },
  example: {
    layers: [
      { what: 'indoor film', resistance: '0.61 R' },
      { what: 'gypsum board', thickness: '1/2 in', conductivity: '0.16 W/(m K)' },
      { what: 'glass fibre', thickness: '6 in', per_inch: '3 R per in' },
      { what: 'outdoor film', resistance: '0.17 R' },
    ],
    second: [
      { what: 'indoor film', resistance: '0.61 R' },
      { what: 'gypsum board', thickness: '1/2 in', conductivity: '0.16 W/(m K)' },
      { what: 'truss chord', thickness: '1 1/2 in', per_inch: '1.11 R per in' },
      { what: 'glass fibre', thickness: '4 1/2 in', per_inch: '3 R per in' },
      { what: 'outdoor film', resistance: '0.17 R' },
    ],
    second_share: '10 %',
  },
  work: ({ layers: entered, second, second_share, method }) => {
    const paired = (second ?? []).length > 0;
    if (paired !== (second_share !== undefined)) {
      throw new EntriesClash({
        field: paired ? 'second_share' : 'second',
        label: paired ? 'Share of the second path' : 'Layers of the second path',
        found: paired ? 'nothing' : `no layers beside a share of ${second_share ? format(second_share) : ''}`,
        expected: paired ? 'its share of the area' : 'the layers of that path, or no share',
      });
    }
    if (method === 'isothermal planes' && second?.length !== entered.length)
      throw new EntriesClash({
        field: 'second',
        label: 'Layers of the second path',
        found: `${second?.length ?? 0} beside ${entered.length} of the first, by the isothermal-planes method`,
        expected: 'as many as the first path has, each beside its like',
      });
    const first = path(entered, 'layers', { suffix: '', label: paired ? 'first path' : 'the layers' });
    const figures: Record<string, Figure> = {};
    const rows = (from: Pick<Path, 'layers'>) =>
      from.layers.map(({ name, resistance }) => ({ layer: name, resistance }));
    const columns = { layer: 'Layer', resistance: 'R' };
    const format3 = { resistance: { figures: 3 } } as const;
    const tables = {
      layers: {
        title: paired ? 'Layers of the first path' : 'Layers',
        columns,
        rows: rows(first),
        format: format3,
      },
    };
    if (!paired || !second_share) {
      figures.resistance = { label: 'R of the layers', value: first.resistance };
      figures.transmittance = { label: 'U of the layers', value: first.transmittance };
      return { figures, tables, cautions: [], remarks: [] };
    }
    const other = path(second ?? [], 'second', { suffix: 'f', label: 'second path' });
    const transmittance = inParallel(first.transmittance, other.transmittance, second_share);
    const parallel = named(resistanceOf(transmittance), 'Re', 'Effective R');
    const two = {
      ...tables,
      second: { title: 'Layers of the second path', columns, rows: rows(other), format: format3 },
    };
    const each = {
      first_resistance: { label: 'R of the first path', value: first.resistance },
      second_resistance: { label: 'R of the second path', value: other.resistance },
    };
    if (method === 'isothermal planes') {
      const planes = byPlanes(first, other, second_share);
      return {
        figures: {
          resistance: { label: 'Effective R', value: planes.resistance },
          transmittance: { label: 'U of both paths', value: planes.transmittance },
          parallel: { label: 'Effective R by the parallel-path method', value: parallel },
          ...each,
        },
        tables: {
          ...two,
          planes: { title: 'Both paths, layer by layer', columns, rows: rows(planes), format: format3 },
        },
        cautions: [],
        remarks: [],
      };
    }
    const worse = compare(other.resistance, first.resistance) < 0 ? 'second' : 'first';
    return {
      figures: {
        resistance: { label: 'Effective R', value: parallel },
        transmittance: { label: 'U of both paths', value: transmittance },
        ...each,
      },
      tables: two,
      cautions: [],
      remarks:
        compare(other.resistance, first.resistance) === 0 || second_share.amount === 0
          ? []
          : [`The ${worse} path lets through more than its share of the heat.`],
    };
  },
});
