import { beforeParts } from '../../job/parts/before.ts';
import { readyEarly } from '../../job/parts/ready-early.ts';
import { early, partsSheet } from '../parts/parts-sheet.tsx';
import { rules } from '../rules.ts';

export const beforeSheet = {
  ...partsSheet('before', beforeParts),
  early: early((entries) => readyEarly(entries, rules)),
};
