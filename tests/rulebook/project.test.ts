import { describe, expect, test } from 'vitest';
import { citedByCheck } from '../../src/rulebook/cited-by-check.ts';
import { loadProject } from '../../src/rulebook/project.ts';
import type { RuleSource } from '../../src/rulebook/schema.ts';
import { sourceKindOf, sourceKinds, sourceLine, statusMeaning, statusOf } from '../../src/rulebook/status.ts';

const { data, files } = loadProject('refused');
const entries = [...Object.values(data.rules), ...Object.values(data.cautions)].map(({ id, source }) => ({
  id,
  source,
}));
const ofKind = <K extends RuleSource['kind']>(kind: K) =>
  entries.flatMap(({ id, source }) =>
    source.kind === kind ? [{ id, source: source as Extract<RuleSource, { kind: K }> }] : [],
  );

describe('the rulebook of the project', () => {
  test('loads without a problem and is not empty', () => {
    expect(files.problems).toEqual([]);
    expect(Object.keys(data.rules).length).toBeGreaterThan(20);
    expect(Object.keys(data.cautions).length).toBeGreaterThan(10);
    expect(files.checks.length).toBeGreaterThan(20);
  });

  test('every id is the path of its file and its key', () => {
    for (const { id, file } of Object.values(data.rules)) {
      const way = file
        .replace(/^rules\//, '')
        .replace(/\.yaml$/, '')
        .replaceAll('/', '.');
      expect(id.startsWith(`${way}.`), id).toBe(true);
    }
  });

  test('every derived number is worked out', () => {
    for (const { id, value } of Object.values(data.rules)) {
      if (value.kind === 'exact') expect(value.number, id).toSatisfy(Number.isFinite);
    }
  });

  /** By hand: the hole is 6 in, and each layer overlaps the one below by 2 in all round. */
  const layers: readonly [id: string, inches: number][] = [
    ['patch.layers.metal-side', 6 + 2 * 2],
    ['patch.layers.membrane-side', 6 + 2 * 2 + 2 * 2],
  ];
  test.each(layers)('%s comes to %d in', (id, inches) => {
    expect(data.rules[id]?.value).toMatchObject({ number: inches, unit: 'in' });
  });
});

describe('every value says where it is from', () => {
  // It stands after the word "Edition" in a row, and in brackets after the name of the document.
  test.each(Object.values(data.documents))('the edition of $document reads right after its name', (each) =>
    expect(each.edition).not.toMatch(/^(edition|not shown|by)\b/),
  );

  test.each(ofKind('document'))(
    'the edition that $id was read in reads as its document’s does',
    ({ source }) => expect(source.edition ?? '').not.toMatch(/^(edition|not shown|by)\b/),
  );

  /** What was read in copies only has them named once, beside the document; what a value was read in besides, its remark says. */
  const cited = [
    ...entries.flatMap(({ source }) => (source.kind === 'document' ? [source] : [])),
    ...files.checks.flatMap(({ entry }) => citedByCheck(entry.from) ?? []),
  ];
  const inCopies = Object.entries(data.documents).filter(
    ([id]) =>
      cited.some(({ document }) => document === id) &&
      !cited.some(({ document, read }) => document === id && read === 'read'),
  );
  test.each(inCopies)('%s, of which copies alone were read, says which', (_, { read_in }) => {
    expect(read_in ?? '').toMatch(/^[A-Z].*\.$/);
  });

  test.each(ofKind('document'))(
    '$id names its document, the place in it and how it was read',
    ({ source }) => {
      const document = data.documents[source.document];
      expect(document).toBeDefined();
      expect(source.clause.trim()).not.toBe('');
      expect(['read', 'reprint', 'not-read']).toContain(source.read);
      expect(sourceLine(source, data.documents)).toBe(
        `${document?.document} (${source.edition ?? document?.edition}), ${source.clause}`,
      );
      expect(['read', 'reprint', 'not read']).toContain(statusOf(source));
    },
  );

  test.each(ofKind('memory'))('$id was recalled, and is marked as not checked', ({ source }) => {
    expect(statusOf(source)).toBe('memory');
    expect(sourceLine(source, data.documents)).toBe('from memory, not checked');
    expect(statusMeaning[statusOf(source)]).toMatch(/not checked/);
  });

  test.each(ofKind('practice'))('$id is practice, and claims no document', ({ source }) => {
    expect(sourceLine(source, data.documents)).toBe('common practice, no source');
  });

  test.each(ofKind('derived'))('$id shows its working and what it is worked from', ({ source }) => {
    expect(source.working.trim()).not.toBe('');
    expect(source.from.every((id) => data.rules[id])).toBe(true);
    expect(sourceLine(source, data.documents)).toBe('worked out by us');
  });

  test('each source is counted under one kind, and a document under the kind of its text', () => {
    for (const { source } of entries) expect(sourceKinds).toContain(sourceKindOf(source, data.documents));
    expect(
      sourceKindOf({ kind: 'document', document: 'cfr-24-3280', clause: 'x', read: 'read' }, data.documents),
    ).toBe('regulation');
  });
});

describe('every safety value can be compared', () => {
  test('which way is stricter is said only where the value has that way', () => {
    for (const { id, safety, value } of Object.values(data.rules)) {
      if (safety === 'narrower is stricter') expect(value.kind, id).toBe('between');
      if (safety === 'lower is stricter' || safety === 'higher is stricter')
        expect(value.kind, id).not.toBe('one-of');
    }
  });
});
