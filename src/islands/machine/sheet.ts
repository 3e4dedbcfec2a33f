import { machineParts } from '../../job/parts/machine.ts';
import { partsSheet } from '../parts/parts-sheet.tsx';

export const machineSheet = partsSheet('machine', machineParts);
