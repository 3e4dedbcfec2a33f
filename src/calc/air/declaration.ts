import { compare, input } from '../../quantity/quantity.ts';
import { calculation, type Figure } from '../declare/calculation.ts';
import type { Values } from '../declare/field.ts';
import { choiceField, countField, lengthField, quantityField } from '../declare/field.ts';
import { type Remark, said } from '../declare/remark.ts';
import { ductKinds, exhaustDuct } from './duct.ts';
import { existingField, homeFields, roomsField } from './fields.ts';
import { type FreshAir, freshAir } from './fresh-air.ts';
import type { Room, RoomExhaust } from './rooms.ts';

/** What a fan has to move is not rounded down. */
const rates = { figures: 3, round: 'up' } as const;

/** The rooms as they were entered, each with a name to be told apart by. */
const roomsOf = (rooms: Values<{ rooms: typeof roomsField }>['rooms']): Room[] =>
  rooms.map(({ name, room, flow, runs, window }, place) => ({
    name: name ?? `${room} ${place + 1}`,
    room,
    flow,
    runs: runs ?? 'on demand',
    windowOpens: window === 'opens',
  }));

export const freshAirCalculation = calculation({
  name: 'fresh-air',
  title: 'Fresh air',
  question: 'How much fresh air does the home need once it is tighter, and how big a fan is that?',
  fields: { ...homeFields, rooms: roomsField, existing: existingField },
  example: {
    floor: '924 ft²',
    bedrooms: '3',
    rooms: [
      { name: 'kitchen', room: 'kitchen', flow: '60 cfm', runs: 'on demand', window: 'opens' },
      { name: 'hall bath', room: 'bath', flow: '35 cfm', runs: 'on demand', window: 'none that opens' },
    ],
  },
  work: ({ floor, bedrooms, rooms, existing }, rules) => {
    const people = input(bedrooms, '1', 'bedrooms', { symbol: 'b', label: 'Bedrooms' });
    const air = freshAir({ floor, bedrooms: people, rooms: roomsOf(rooms), existing }, rules);
    const figures: Record<string, Figure> = {
      to_install: {
        label: existing ? 'Still to install, running all the time' : 'To install, running all the time',
        value: air.toInstall,
        format: rates,
      },
      whole_house: { label: 'Whole-house rate', value: air.wholeHouse, format: rates },
    };
    if (air.rooms.length > 0) {
      figures.shortfall = { label: 'What the rooms lack', value: air.shortfall, format: rates };
      figures.made_up = { label: 'Added to make up for it', value: air.madeUp, format: rates };
      figures.total = { label: 'Whole-house rate with what is added', value: air.total, format: rates };
    }
    figures.factory = {
      label: 'What the factory rule asked of the builder',
      value: air.factory,
      format: rates,
    };
    return {
      figures,
      ...(air.rooms.length > 0 ? { tables: { rooms: roomTable(air.rooms) } } : {}),
      cautions: air.cautions,
      remarks: remarksOn(air),
    };
  },
});

function roomTable(rooms: readonly RoomExhaust[]) {
  return {
    title: 'Exhaust, room by room',
    columns: {
      name: 'Room',
      asked: 'Asked of its fan',
      runs: 'Running',
      measured: 'Measured',
      window: 'Window',
      shortfall: 'Lacks',
      factory: 'Factory rule asked',
    },
    rows: rooms.map((each) => ({
      name: each.name,
      asked: each.asked,
      runs: each.askedRuns,
      measured: each.flow ?? 'none',
      window: each.windowOpens ? 'opens' : 'none that opens',
      shortfall: each.shortfall,
      factory: each.factory,
    })),
    format: { asked: rates, shortfall: rates, factory: rates },
  };
}

function remarksOn({ rooms, toInstall, factory, wholeHouse }: FreshAir): Remark[] {
  const remarks: Remark[] = [
    compare(wholeHouse, factory) > 0
      ? 'The factory rule asked less than the standard asks now: the home’s own fan may not be enough.'
      : 'The factory rule asked no less than the standard asks now: measure what the home’s own fan still moves.',
  ];
  if (toInstall.amount === 0)
    remarks.push('The fan that is there does what is asked: nothing is to be added.');
  if (rooms.some(({ shortfall }) => shortfall.amount > 0))
    remarks.push(
      'The other way is a fan that does what is asked in each room that lacks exhaust; nothing is then added for it.',
    );
  const kitchen = rooms.find(({ room }) => room === 'kitchen');
  if (kitchen)
    remarks.push(
      said`${kitchen.asked} is the rate of a hood over the range that leads outdoors. As recalled, more is asked of any other kitchen fan: read the edition that is adopted.`,
    );
  for (const { name, runs, askedRuns, asked, heldAgainst } of rooms) {
    if (runs !== askedRuns)
      remarks.push(
        said`No rate is entered here for a fan of the ${name} that runs all the time: it is compared with ${asked} on demand.`,
      );
    else if (compare(heldAgainst, asked) !== 0)
      remarks.push(
        said`The fan of the ${name} moves less than the ${asked} asked of one that runs all the time, so it is compared with ${heldAgainst} on demand. One that moves ${asked} lacks nothing.`,
      );
  }
  return remarks;
}

/** A duct this much wider than its row is the same size read from another tape. */
const SAME_SIZE = 1e-9;

export const exhaustDuctCalculation = calculation({
  name: 'exhaust-duct',
  title: 'Exhaust duct',
  question: 'How long may the duct of this fan be?',
  fields: {
    flow: quantityField({
      dimension: 'air flow',
      beside: 'cfm',
      symbol: 'q',
      label: 'Rated flow of the fan',
      hint: 'From its label or its maker’s sheet.',
      example: '80 cfm',
      zero: 'refused',
      most: '2000 cfm',
    }),
    size: lengthField('D', 'Size across', 'Inside diameter of the duct.', '4 in', { most: '24 in' }),
    kind: choiceField(
      'Kind of duct',
      'Smooth is rigid pipe: metal, or plastic where no kitchen hood is on it.',
      ductKinds,
    ),
    elbows: countField('Elbows', 'Every turn of the duct, the one at the fan too.', '1', { most: 20 }),
  },
  example: { flow: '80 cfm', size: '4 in', kind: 'smooth', elbows: '1' },
  work: ({ flow, size, kind, elbows }, rules) => {
    const turns = input(elbows, '1', 'elbows', { symbol: 'n', label: 'Elbows' });
    const { straight, allowed, word, row, cautions } = exhaustDuct(flow, size, kind, turns, rules);
    const remarks: Remark[] = [];
    if (row && compare(size, row) > SAME_SIZE)
      remarks.push(said`The row for ${row} duct answers for ${size} duct, which is wider.`);
    if (word === 'none in the table')
      remarks.push(
        said`The table has no row for ${flow} through ${size} duct: go by the fan maker’s own duct table, or measure the flow when the duct is in.`,
      );
    if (word === 'not allowed')
      remarks.push(
        said`The table allows no length of this duct for ${flow}: take a wider or a smooth duct, or go by the fan maker’s own duct table.`,
      );
    if (word === 'no limit')
      remarks.push(
        said`The table sets no limit to this duct for ${flow}, and elbows take nothing from that. Keep it short all the same.`,
      );
    if (allowed?.amount === 0)
      remarks.push('The elbows use up all the length: take a wider or a smooth duct, or fewer elbows.');
    const figures: Record<string, Figure> =
      straight && allowed
        ? {
            allowed: { label: 'Length allowed', value: allowed },
            straight: { label: 'Without elbows', value: straight },
          }
        : { verdict: { label: 'Length allowed', value: String(word) } };
    return { figures, cautions, remarks };
  },
});
