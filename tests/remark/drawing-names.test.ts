import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { VFile } from 'vfile';
import { expect, test } from 'vitest';
import { drawingNames } from '../../src/remark/drawing-names.ts';

test('the names of the drawings on a page are handed on in its order, beside what its head says', () => {
  const file = new VFile(
    '<Drawing name="roof-plan" />\n\n1. Look.\n\n   <Drawing name="section" />\n\n{/* <Drawing name="none" /> */}\n',
  );
  file.data.astro = { frontmatter: { title: 'A roof' } };
  const processor = unified().use(remarkParse).use(remarkMdx).use(drawingNames);
  processor.runSync(processor.parse(file), file);
  expect(file.data.astro.frontmatter).toEqual({ title: 'A roof', drawings: ['roof-plan', 'section'] });
});
