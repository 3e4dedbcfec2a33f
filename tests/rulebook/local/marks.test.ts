import { describe, expect, test } from 'vitest';
import { marksShown } from '../../../src/rulebook/local/marks.ts';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { inLayer } from './folder.ts';

const told = (says: string): string[] =>
  inLayer(
    { 'notes.yaml': `permit:\n  title: T\n  says: ${JSON.stringify(says)}\n  on: [do/patching]\n` },
    (folder) => {
      const layer = readLayer(folder);
      expect(layer.problems).toEqual([]);
      return marksShown(layer).map(({ line, column, found }) => `${line}:${column} ${found}`);
    },
  );

describe('marks among words that are shown as they are', () => {
  test.each([
    ['of HTML', 'Ask <b>first</b>.', '<b>'],
    ['of bold words', 'Ask **first**.', '**first**'],
    ['of a link', 'See [us](/local/).', '[us](/local/)'],
    ['of a sign', 'Keep &lt; three.', '&lt;'],
  ])('%s are told, and stop nothing', (_, says, mark) =>
    expect(told(says)).toEqual([`3:9 ${mark}, which will stand on the page with its marks`]),
  );

  test.each(['Ask first.', 'Two < three.', 'Dee & sons.', 'Five * two.', 'Ask [us] (always).'])(
    'none: %s',
    (says) => expect(told(says)).toEqual([]),
  );
});
