import { bareQuantity } from './bare-quantity.ts';
import { copyToldAsRead } from './copy-told-as-read.ts';
import { dateInFuture } from './date-in-future.ts';
import { derivedValue } from './derived-value.ts';
import { duplicateId } from './duplicate-id.ts';
import type { Lint } from './lint.ts';
import { placeholderInRemark } from './placeholder-in-remark.ts';
import { placeholderPart } from './placeholder-part.ts';
import { rangeUpsideDown } from './range-upside-down.ts';
import { ruleNeverUsed } from './rule-never-used.ts';
import { sameCheck } from './same-check.ts';
import { tableGapOrOverlap } from './table-gap-or-overlap.ts';
import { tableShape } from './table-shape.ts';
import { unknownCaution } from './unknown-caution.ts';
import { unknownRule } from './unknown-rule.ts';
import { unknownSource } from './unknown-source.ts';
import { unknownUnit } from './unknown-unit.ts';
import { unusedSource } from './unused-source.ts';

/** Every question asked of the rule files. A new lint is a file beside these and a line here. */
export const lints: readonly Lint[] = [
  duplicateId,
  unknownUnit,
  unknownSource,
  unusedSource,
  copyToldAsRead,
  unknownRule,
  unknownCaution,
  sameCheck,
  placeholderPart,
  placeholderInRemark,
  rangeUpsideDown,
  tableShape,
  tableGapOrOverlap,
  dateInFuture,
  derivedValue,
  bareQuantity,
  ruleNeverUsed,
];
